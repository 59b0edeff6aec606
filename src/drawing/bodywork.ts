interface Point {
  x: number
  z: number
}

/** One step of an outline: move, line, curve or close, with its points in the chassis frame [m]. */
export interface Step {
  to: 'M' | 'L' | 'C' | 'Z'
  points: readonly Point[]
}
export type Outline = readonly Step[]

/** The chassis points that the drawing hangs on, in the chassis frame [m]. */
export interface Anchors {
  pivot: Point
  /** where the steering axis passes the upper yoke */
  head: Point
}

// A plain road bike, drawn once in millimetres between a pivot at (540, 390) and an upper yoke at (1131, 913), and stretched between the same
// two points of each bike. No figure of any bike is in it.
const DRAWN_PIVOT = { x: 540, z: 390 }
const DRAWN_HEAD = { x: 1131, z: 913 }

const parts: Readonly<Record<string, string>> = {
  frame:
    'M1146 872 L1196 765 L1104 705 C1010 650 880 640 800 600 C700 550 640 470 618 360 L590 300 L520 310 L486 430 C520 520 590 600 655 650 C740 715 860 760 960 785 C1040 805 1100 835 1146 872 Z',
  downTube: 'M1172 740 L1010 470 L968 330',
  subframe: 'M700 690 L330 768 L150 832 M560 545 L300 752',
  crankcase:
    'M612 300 C600 235 640 205 700 205 L905 212 C975 220 985 300 968 352 L948 446 L640 452 C600 428 618 352 612 300 Z',
  cylinder: 'M770 450 L944 446 L990 585 L828 632 Z',
  headCover: 'M828 632 L990 585 L1006 640 C990 676 900 702 858 694 Z',
  fins: 'M777 472 L951 462 M786 500 L960 488 M795 528 L969 515 M804 556 L979 542 M813 584 L986 568 M821 610 L990 590',
  sump: 'M670 207 L685 176 L840 180 L862 211',
  exhaust: 'M985 612 C1046 604 1056 520 1036 420 C1018 300 1000 196 900 186 L600 196',
  silencer: 'M612 176 L560 176 L255 232 C235 238 232 300 252 306 L560 240 L612 222 Z',
  tank: 'M1098 918 C1090 966 1040 1000 975 998 C890 994 820 930 748 838 L764 782 C850 768 940 790 1010 806 C1056 818 1090 850 1098 918 Z',
  tankSeam: 'M758 806 C850 800 960 826 1070 872',
  seat: 'M756 828 C690 790 600 782 520 800 C450 815 420 850 380 866 C300 884 220 884 150 900 L128 872 C180 842 250 806 330 790 C470 762 620 752 762 784 Z',
  tail: 'M128 872 L112 898 L150 900 M330 790 C260 772 190 812 128 872',
  plate: 'M150 850 L58 680 M92 742 L60 752',
  peg: 'M560 322 L632 316 M600 319 L586 372',
  bars: 'M1120 928 L1104 968 C1080 1010 1060 1020 1030 1016',
  grip: 'M1034 1016 L950 998',
  lampBracket: 'M1158 900 L1206 884',
  lamp: 'M1206 952 C1262 952 1284 900 1276 862 C1264 812 1210 806 1190 822 C1180 870 1188 920 1206 952 Z',
  lens: 'M1268 938 C1292 900 1290 850 1262 824',
  clock: 'M1112 946 L1166 922 L1176 952 L1130 974 Z',
  shockHead: 'M590 664',
  twinShockHead: 'M196 766',
}

function read(outline: string): Step[] {
  return [...outline.matchAll(/([MLCZ])([^MLCZ]*)/g)].map(([, to, rest = '']) => {
    const numbers =
      rest.trim() === ''
        ? []
        : rest
            .trim()
            .split(/[\s,]+/)
            .map(Number)
    const points = Array.from({ length: numbers.length / 2 }, (_, index) => ({
      x: numbers[2 * index]!,
      z: numbers[2 * index + 1]!,
    }))
    return { to: to as Step['to'], points }
  })
}

const drawn = Object.entries(parts).map(([name, outline]) => [name, read(outline)] as const)

/** The sprung parts, in the chassis frame [m]: a bike that pitches or sinks moves them as one. */
export interface Bodywork extends Anchors {
  outlines: Readonly<Record<string, Outline>>
}

function stretched({ pivot, head }: Anchors): Bodywork {
  const sx = (head.x - pivot.x) / (DRAWN_HEAD.x - DRAWN_PIVOT.x)
  const sz = (head.z - pivot.z) / (DRAWN_HEAD.z - DRAWN_PIVOT.z)
  const place = ({ x, z }: Point): Point => ({
    x: pivot.x + (x - DRAWN_PIVOT.x) * sx,
    z: pivot.z + (z - DRAWN_PIVOT.z) * sz,
  })
  const outlines = Object.fromEntries(
    drawn.map(([name, outline]) => [
      name,
      outline.map((step) => ({ to: step.to, points: step.points.map(place) })),
    ]),
  )
  return { pivot, head, outlines }
}

let last: Bodywork | null = null

/** The sprung parts between a pivot and an upper yoke. The same object as the time before while these stay, so that a moving bike is not drawn anew. */
export function bodywork(anchors: Anchors): Bodywork {
  const same = (a: Point, b: Point): boolean => a.x === b.x && a.z === b.z
  if (last === null || !same(last.pivot, anchors.pivot) || !same(last.head, anchors.head))
    last = stretched(anchors)
  return last
}
