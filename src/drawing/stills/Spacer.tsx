import ForkSectionKit from '../ForkSection.tsx'
import { Dimension } from '../Dimension.tsx'
import type { StillProps } from '../props.ts'
import { LEG } from './legs.ts'
import { Window } from './bike.tsx'
import { Frame, Words } from './parts.tsx'

const TOP = 70
const SCALE = 1.0e3
const CUT = 0.215
const FREE = LEG.tubeDepth - LEG.spring!.freeLength
const WASHER = FREE - 0.002
const SPACER = 0.156
const REACH = 0.01
const open = { ...LEG, capReach: WASHER, spacerLength: 0 }
/** 15 mm above the seat here; the cap's 10 mm make 25 mm of preload. */
const PROUD = SPACER - WASHER

/** Cap and adjuster beside the tube, by themselves. */
function CapAlone({ x }: { x: number }) {
  return (
    <g class="fork-section now">
      <rect class="part" x={x - 23} y={TOP - 14} width="46" height="14" />
      <rect class="part" x={x - 14} y={TOP - 24} width="28" height="10" />
      <rect class="part" x={x - 15} y={TOP} width="30" height={REACH * SCALE} />
    </g>
  )
}

export default function Spacer({ prefix }: StillProps) {
  const y = (depth: number): number => TOP + depth * SCALE
  return (
    <Frame
      height={y(CUT) + 66}
      label="Three readings for a spacer: from the cap’s seat down to the washer; on the cap, from its seat to the face that pushes the spacer; and the spacer in the leg, from the cap’s seat to its upper end. The last two add up to the preload."
    >
      <line class="guide" x1="6" x2="354" y1={TOP} y2={TOP} />
      <Window id={`${prefix}-open`} x={0} y={0} width={360} height={y(CUT) + 4}>
        <g class="no-cap">
          <ForkSectionKit
            leg={open}
            state="now"
            x={78}
            top={TOP}
            scale={SCALE}
            across={SCALE}
            cut={CUT}
          />
        </g>
        <g class="no-cap">
          <ForkSectionKit
            leg={{ ...LEG, capReach: -PROUD, spacerLength: SPACER }}
            state="now"
            x={304}
            top={TOP}
            scale={SCALE}
            across={SCALE}
            cut={CUT}
          />
        </g>
      </Window>
      <Dimension from={[78, y(WASHER)]} to={[78, TOP]} text="" state="now" />
      <Words at={[50, y(WASHER / 2)]} anchor="end" lines={['depth']} tone="now" />
      <CapAlone x={186} />
      <Dimension from={[218, y(REACH)]} to={[218, TOP]} text="" state="now" />
      <Words at={[222, y(REACH) + 14]} lines={['reach']} tone="now" />
      <Dimension from={[276, TOP]} to={[276, y(-PROUD)]} text="" state="now" />
      <Words at={[270, TOP - 26]} anchor="end" lines={['stands', 'above']} tone="now" />
      <Words at={[78, y(CUT) + 28]} anchor="middle" lines={['1  down to', 'the washer']} />
      <Words at={[186, y(CUT) + 28]} anchor="middle" lines={['2  the cap', 'alone']} />
      <Words at={[304, y(CUT) + 28]} anchor="middle" lines={['3  spacer', 'in the leg']} />
    </Frame>
  )
}
