import { round } from '../state.ts'
import SpringCoils from '../SpringCoils.tsx'
import { Call, Frame, Move, Words } from './parts.tsx'

/** What is written beside the parts of the press. */
export interface PressWords {
  guard: readonly string[]
  pointer: readonly string[]
  rod: readonly string[]
  display: readonly string[]
  block: readonly string[]
  /** parts that the procedure's steps name anyway */
  also?: { screw: string; plate: string; spring: string; scale: readonly string[] }
}

const PLAIN: PressWords = {
  guard: ['guard, closed', 'and latched'],
  pointer: ['pointer: length', 'read outside'],
  rod: ['guide rod,', 'slides freely'],
  display: ['load display,', 'outside too'],
  block: ['gauge block,', 'pointer set to it'],
}

const X = 108
const TOP = 96
const FOOT = 240
const RULER = 204

/** The parts of the press that its procedure leaves unnamed. */
function Also({ screw, plate, spring, scale }: NonNullable<PressWords['also']>) {
  return (
    <>
      <Call at={[238, 16]} from={[234, 12]} to={[X + 7, 12]} lines={[screw]} />
      <Call at={[238, 134]} from={[234, 130]} to={[X + 36, TOP - 3]} lines={[plate]} />
      <Call at={[238, 206]} from={[234, 202]} to={[X + 26, 206]} lines={[spring]} />
      <Call at={[216, 314]} from={[212, 308]} to={[X + 20, FOOT + 38]} lines={scale} />
    </>
  )
}

/** A rule on end: its edges and its marks. */
function Rule({ x, from, to }: { x: number; from: number; to: number }) {
  const marks = Array.from(
    { length: Math.floor((to - from) / 6) },
    (_, index) => `M${x} ${round(from + 3 + 6 * index)}h${index % 5 === 0 ? 9 : 5}`,
  )
  return (
    <g>
      <rect class="tape" x={x} y={from} width="16" height={to - from} />
      <path class="detail" d={marks.join('')} />
    </g>
  )
}

/** The arm that the moving plate carries out through a slot of the guard, with the pointer at its end. */
function Pointer({ y }: { y: number }) {
  return (
    <g>
      <path class="support-metal" d={`M${X + 46} ${y - 3}H${RULER - 12}v6H${X + 46}z`} />
      <path class="support-pad" d={`M${RULER - 12} ${y - 6}l13 6l-13 6z`} />
    </g>
  )
}

/** The closed guard: two walls and a lid with a latch, and the slot that the arm passes. */
function Guard() {
  const [left, right, top, bottom] = [X - 62, X + 62, TOP - 32, FOOT + 16]
  return (
    <g>
      <path class="guard-fill" d={`M${left} ${bottom}V${top}H${right}V${bottom}z`} />
      <path
        class="guard-wall"
        d={`M${left} ${bottom}V${top}H${X - 12}M${X + 12} ${top}H${right}V${bottom}`}
      />
      <path class="guard-slot" d={`M${right} ${TOP - 18}V${FOOT - 8}`} />
      <rect
        class="support-pad"
        x={left - 6}
        y={(top + bottom) / 2 - 9}
        width="12"
        height="18"
        rx="2"
      />
    </g>
  )
}

/** Before the spring goes in: plates closed on a block of known height, the scale set to that. */
function GaugeBlock({ y }: { y: number }) {
  return (
    <g>
      <rect class="now solid" x={X - 46} y={y - 34} width="92" height="9" />
      <rect class="now solid" x={X - 46} y={y} width="92" height="9" />
      <rect class="gauge-block" x={X - 16} y={y - 25} width="32" height="25" />
      <path
        class="detail"
        d={`M${X - 16} ${y - 9}l16 -16M${X - 16} ${y}l25 -25M${X - 6} ${y}l22 -22M${X + 6} ${y}l10 -10`}
      />
      <Rule x={RULER} from={y - 46} to={y + 14} />
      <Pointer y={y - 29} />
    </g>
  )
}

/** The press with its guard closed, and the gauge block that sets its rule. */
export function Press({ words }: { words: PressWords }) {
  return (
    <Frame
      height={424}
      label="A spring in a press, the guard closed and latched around plates and spring. The upper plate carries an arm out through a slot of the guard, with a pointer on a rule outside: there the length is read. The load cell lies under the lower plate, its display outside the guard. Below: before the spring goes in, the plates are closed on a gauge block and the rule is set to its height."
    >
      <path class="metal" d={`M20 18h176v16H20zM20 286h176v14H20z`} />
      <path class="metal" d={`M24 34h10v252H24zM182 34h10v252h-10z`} />
      <Guard />
      <rect class="metal" x={X - 8} y="6" width="16" height={TOP - 18} />
      <path
        class="detail"
        d={[40, 47, 54, 61, 68, 75].map((y) => `M${X - 8} ${y}l16 4`).join('')}
      />
      <Move from={[X + 26, 40]} to={[X + 26, 62]} />
      <rect class="now solid" x={X - 46} y={TOP - 12} width="92" height="12" />
      <g class="fork-section now">
        <SpringCoils x={X} radius={25} from={TOP} to={FOOT} wire={8} coils={9} />
      </g>
      <rect class="rod" x={X - 6} y={TOP} width="12" height={FOOT - TOP} />
      <rect class="now solid" x={X - 46} y={FOOT} width="92" height="12" />
      <Rule x={RULER} from={TOP - 24} to={FOOT + 4} />
      <Pointer y={TOP - 6} />
      <rect class="support-metal" x={X - 34} y={FOOT + 16} width="68" height="30" rx="3" />
      <path class="outside-wire thin" d={`M${X + 34} ${FOOT + 31}H${RULER + 2}`} />
      <rect class="support-metal" x={RULER + 2} y={FOOT + 18} width="38" height="26" rx="3" />
      <rect class="support-hole" x={RULER + 8} y={FOOT + 24} width="26" height="14" />
      <Call at={[238, 44]} from={[234, 44]} to={[X + 62, TOP - 29]} lines={words.guard} />
      <Call at={[238, 100]} from={[234, 96]} to={[RULER + 2, TOP - 6]} lines={words.pointer} />
      <Call at={[238, 164]} from={[234, 160]} to={[X + 6, 176]} lines={words.rod} />
      <Call at={[254, 244]} from={[250, 246]} to={[RULER + 30, FOOT + 20]} lines={words.display} />
      {words.also && <Also {...words.also} />}
      <GaugeBlock y={386} />
      <Words at={[6, 332]} lines={['first, without the spring:']} tone="quiet" />
      <Call at={[238, 372]} from={[234, 368]} to={[X + 14, 372]} lines={words.block} />
    </Frame>
  )
}

export default function SpringTest() {
  return <Press words={PLAIN} />
}
