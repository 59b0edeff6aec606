import ForkSectionKit from '../kit/ForkSection.tsx'
import { Dimension } from '../kit/Dimension.tsx'
import { layoutFork } from '../kit/forkLayout.ts'
import { LEG } from './legs.ts'
import { Frame, Words } from './parts.tsx'

const TOP = 70
const SCALE = 1.0e3
const CUT = 0.215
const FREE = LEG.tubeDepth - LEG.spring!.freeLength
const WASHER = FREE - 0.002
const open = { ...LEG, capReach: WASHER, spacerLength: 0 }
const PROUD = LEG.spacerLength - WASHER

/** Cap and adjuster beside the tube, by themselves. */
function CapAlone({ x }: { x: number }) {
  const { to } = layoutFork(LEG).cap
  return (
    <g class="fork-section now">
      <rect class="part" x={x - 23} y={TOP - 14} width="46" height="14" />
      <rect class="part" x={x - 14} y={TOP - 24} width="28" height="10" />
      <rect class="part" x={x - 15} y={TOP} width="30" height={to * SCALE} />
    </g>
  )
}

export default function Spacer() {
  const y = (depth: number): number => TOP + depth * SCALE
  const reach = LEG.capReach
  return (
    <Frame height={y(CUT) + 66} label="Three readings for a spacer: from the cap’s seat down to the washer; on the cap, from its seat to the face that pushes the spacer; and the spacer in the leg, from the cap’s seat to its upper end. The last two add up to the preload.">
      <line class="guide" x1="6" x2="354" y1={TOP} y2={TOP} />
      <g class="no-cap">
        <ForkSectionKit leg={open} state="now" x={62} top={TOP} scale={SCALE} across={SCALE} cut={CUT} />
      </g>
      <Dimension from={[62, y(WASHER)]} to={[62, TOP]} text="" state="now" />
      <Words at={[68, y(WASHER / 2)]} lines={['depth']} tone="now" />
      <CapAlone x={180} />
      <Dimension from={[212, y(reach)]} to={[212, TOP]} text="reach" state="now" />
      <g class="no-cap">
        <ForkSectionKit leg={{ ...LEG, capReach: -PROUD }} state="now" x={300} top={TOP} scale={SCALE} across={SCALE} cut={CUT} />
      </g>
      <Dimension from={[272, TOP]} to={[272, y(-PROUD)]} text="" state="now" />
      <Words at={[264, TOP - 12]} anchor="end" lines={['stands', 'above']} tone="now" />
      <Words at={[62, y(CUT) + 28]} anchor="middle" lines={['1  down to', 'the washer']} />
      <Words at={[180, y(CUT) + 28]} anchor="middle" lines={['2  the cap', 'alone']} />
      <Words at={[300, y(CUT) + 28]} anchor="middle" lines={['3  spacer', 'in the leg']} />
      <Words at={[180, TOP - 52]} anchor="middle" lines={['cap’s seat on one line']} tone="quiet" />
    </Frame>
  )
}
