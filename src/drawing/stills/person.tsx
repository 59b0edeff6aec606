import { round } from '../state.ts'

/** A limb: two places or more joined by straight bones, and its thickness. Millimetres. */
type Limb = readonly [path: string, width: number]

interface Body {
  head: readonly [x: number, z: number, r: number]
  torso: string
  /** behind and in front of what the person reaches around */
  far: readonly Limb[]
  near: readonly Limb[]
}

// A helper of about 1.75 m in front of the bike: feet either side of the front wheel, both hands on the bar. In the ground frame of the side view.
export const HOLDER: Body = {
  head: [1540, 1610, 112],
  torso:
    'M1612 1462C1672 1430 1700 1330 1716 1210C1728 1110 1742 1010 1732 930C1700 890 1600 890 1570 930C1556 1040 1520 1160 1490 1280C1474 1350 1470 1420 1510 1460C1540 1482 1580 1480 1612 1462Z',
  far: [
    ['M1640 930L1590 520L1650 90', 120],
    ['M1650 60L1560 44', 76],
    ['M1560 1400L1350 1180L1130 1090', 84],
  ],
  near: [
    ['M1664 930L1700 500L1760 90', 130],
    ['M1764 60L1662 44', 80],
    ['M1570 1390L1386 1140L1110 1052', 88],
    ['M1112 1056L1076 1046', 66],
  ],
}

function Limbs({ limbs, line }: { limbs: readonly Limb[]; line: number }) {
  return (
    <>
      {limbs.map(([d, width]) => (
        <path key={d} class="person-edge" d={d} stroke-width={round(width)} />
      ))}
      {limbs.map(([d, width]) => (
        <path key={d} class="person-fill" d={d} stroke-width={round(width - 2 * line)} />
      ))}
    </>
  )
}

/** A person from the side, in millimetres; `line` is the width of a line in them. Far limbs are drawn by `part="far"`, the rest by `part="near"`, so that a bike can stand between. */
export function Person({
  of: { head, torso, far, near },
  line,
  part,
}: {
  of: Body
  line: number
  part: 'far' | 'near'
}) {
  if (part === 'far')
    return (
      <g class="person">
        <Limbs limbs={far} line={line} />
      </g>
    )
  return (
    <g class="person">
      <circle class="person-body" cx={head[0]} cy={head[1]} r={head[2]} />
      <path class="person-body" d={torso} />
      <Limbs limbs={near} line={line} />
    </g>
  )
}
