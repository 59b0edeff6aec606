import { solveStance, STANDARD_GRAVITY } from '../../core/index.ts'
import type { Bike, LoadCase } from '../../core/index.ts'
import { aboard } from '../../bikes/aboard.ts'
import type { Aboard } from '../../bikes/aboard.ts'
import { bikeOf } from '../../bikes/bikes.ts'
import type { Fitted } from '../../bikes/bikes.ts'
import { inSI } from '../../bikes/inSI.ts'
import type { BikeSpec } from '../../bikes/inSI.ts'
import type { BikeSheets } from '../../bikes/sheet.ts'
import type { Calculator } from '../../machine/calculator.ts'
import { evaluate } from '../../machine/evaluate.ts'
import type { Given } from '../../machine/given.ts'
import type { Drawn } from './bikes.ts'
import { oneByOne } from './cards.ts'
import type { OneCase } from './oneCase.ts'
import { settle } from './settle.ts'
import { tell } from './told.ts'
import type { Told } from './told.ts'

/** A state of a calculator that settles a whole bike, and the same bike for the second method. */
interface WholeBikeCase {
  calculator: string
  given: Given
  loadCase(spec: BikeSpec, bike: Bike): LoadCase
  fitted?(spec: BikeSpec): Fitted
  /** what the second method tells of this calculator, by output, or an end of an interval */
  outputs(told: Told, drawn: Drawn, spec: BikeSpec): Readonly<Record<string, number>>
  /** bikes that it knows, where it does not know all */
  only?: readonly string[]
}

/** Gentle enough that no invented bike’s rear comes to its top stop. */
const GENTLE = 0.3
const MM = 1e-3
const RIDER = { rider: 80 }
const carrying =
  (load: Aboard) =>
  (spec: BikeSpec): LoadCase => ({ payload: aboard(spec, load) })

/** The gas slowly to where the bike stands, then fast. */
function braking(spec: BikeSpec, bike: Bike): LoadCase {
  const payload = aboard(spec, RIDER)
  const from = solveStance(bike, { payload }).frontTravel
  return { payload, deceleration: GENTLE * STANDARD_GRAVITY, gasState: { exponent: 1.4, from } }
}

const all = (told: Told): Record<string, number> => ({ ...told })
const only =
  (...names: (keyof Told)[]) =>
  (told: Told): Record<string, number> =>
    Object.fromEntries(names.map((name) => [name, told[name]]))

/** What a fork shows of its tube [m]. */
const exposed = (
  { frontTravel }: Told,
  _drawn: Drawn,
  { fork }: BikeSpec,
): { exposedTube: number } => ({
  exposedTube: fork.exposedTube - frontTravel,
})

/** From where friction may hold both ends: pushed down it holds them up, lifted it holds them down. */
function bands(_told: Told, drawn: Drawn, { fork, rear }: BikeSpec): Record<string, number> {
  const [high, low] = [-1, 1].map((way) =>
    settle({ ...drawn, rub: [way * fork.friction, way * rear.friction] }),
  )
  return {
    'frontBand.low': low!.frontTravel,
    'frontBand.high': high!.frontTravel,
    'rearBand.low': low!.rearTravel,
    'rearBand.high': high!.rearTravel,
  }
}

const STANCE = { calculator: 'stance', outputs: all } as const
const STANDING = [
  'frontTravel',
  'rearTravel',
  'rake',
  'trail',
  'wheelbase',
  'frontLoad',
  'rearLoad',
  'frontShare',
  'pitch',
] as const

/** One bike, since a shop measures a fork or buys a tyre for one. */
const ROADSTER = 'middleweight-roadster'

const CASES: readonly WholeBikeCase[] = [
  {
    ...STANCE,
    given: { situation: 'rest', rider: 80, forkPreloadChange: 0 },
    loadCase: carrying(RIDER),
    outputs: (...told) => ({ ...all(told[0]), ...exposed(...told) }),
  },
  {
    ...STANCE,
    given: { situation: 'rest', rider: 80, forkPreloadChange: 0 },
    loadCase: carrying(RIDER),
    outputs: bands,
  },
  {
    ...STANCE,
    given: { situation: 'braking', deceleration: GENTLE, rider: 80, forkPreloadChange: 0 },
    loadCase: braking,
  },
  {
    ...STANCE,
    given: { situation: 'leaning', lean: 30, rider: 80, forkPreloadChange: 5, tubeRaise: 8 },
    fitted: ({ fork }) => ({ forkPreload: fork.preload + 5 * MM, tubeRaise: 8 * MM }),
    loadCase: (spec) => ({ payload: aboard(spec, RIDER), lean: Math.PI / 6 }),
  },
  {
    calculator: 'braking-dive',
    given: { deceleration: GENTLE, rider: 80 },
    loadCase: braking,
    outputs: (told) => ({
      ...only(...STANDING.filter((name) => name !== 'frontShare'), 'frontGrip')(told),
      travelShare: told.frontTravelShare,
    }),
  },
  ...(['preload', 'tubes', 'tyre'] as const).map((by): WholeBikeCase => ({
    calculator: 'ride-height',
    given: { by, amount: 8, rider: 80 },
    loadCase: carrying(RIDER),
    fitted: ({ fork, frontRadius }) =>
      ({
        preload: { forkPreload: fork.preload + 8 * MM },
        tubes: { tubeRaise: 8 * MM },
        tyre: { frontRadius: frontRadius + 8 * MM },
      })[by],
    outputs: (...told) => ({ ...only(...STANDING)(told[0]), ...exposed(...told) }),
  })),
  {
    calculator: 'wheel-loads',
    given: { rider: 90, luggage: 10 },
    loadCase: carrying({ rider: 90, luggage: 10 }),
    outputs: only('frontLoad', 'rearLoad', 'frontShare', 'rake', 'wheelbase'),
  },
  {
    calculator: 'tyre-radius',
    given: { rider: 80, marking: '110/80-17' },
    loadCase: carrying(RIDER),
    fitted: () => ({ frontRadius: 0.304 }),
    outputs: (told) => ({ trail: told.trail, rake: told.rake, wheelLoad: told.frontLoad }),
    only: [ROADSTER],
  },
  {
    calculator: 'oil-height',
    given: { airHeight: 140 },
    loadCase: (spec) => carrying({ rider: spec.rider.mass })(spec),
    fitted: () => ({ airHeight: 0.14 }),
    outputs: (told) => ({ settled: told.frontTravel }),
  },
  {
    calculator: 'choose-rate',
    given: { riderMass: 90 },
    loadCase: carrying({ rider: 90 }),
    outputs: (told) => ({ front: told.frontLoad, forkLoad: told.forkForce }),
  },
]

/** One result of a calculator beside what the second method gives: how far apart [SI; past 1 a share], and how far they may be. */
export interface SecondOutput {
  calculator: string
  output: string
  apart: number
  allowed: number
}

/** States that each have their own way round, with the core’s functions that their results come out of. */
export const singleCases = (bikes: BikeSheets): OneCase[] => oneByOne(bikes[ROADSTER]!)

/** Differences of 20 µm leave some 1e-10 of error. */
const CLOSE = 1e-8

function numberAt(output: unknown, path: string): number {
  const found = path
    .split('.')
    .reduce<unknown>(
      (part, key) => (part as Record<string, unknown> | null | undefined)?.[key],
      output,
    )
  const number = typeof found === 'object' ? (found as { value?: unknown } | null)?.value : found
  return typeof number === 'number' ? number : Number.NaN
}

/** Results of calculators against the second method: the worst over all bikes and states. */
export function secondOutputs(load: (id: string) => Calculator, bikes: BikeSheets): SecondOutput[] {
  const worst = new Map<string, SecondOutput>()
  const compare = (
    calculator: string,
    given: Given,
    others: Readonly<Record<string, number>>,
    allowed = CLOSE,
  ): void => {
    const { now } = evaluate(load(calculator), given, { bikes })
    for (const [path, other] of Object.entries(others)) {
      const ours = numberAt(now?.output, path)
      const apart = Math.abs(ours - other) / Math.max(1, Math.abs(other))
      const [output = ''] = path.split('.')
      const key = `${calculator} ${output}`
      const before = worst.get(key) ?? { apart: 0, allowed: 0 }
      worst.set(key, {
        calculator,
        output,
        // no number is worse than any
        apart: apart <= before.apart ? before.apart : apart,
        allowed: Math.max(before.allowed, allowed),
      })
    }
  }
  for (const { calculator, given, loadCase, fitted, outputs, only: known } of CASES) {
    for (const [bike, sheet] of Object.entries(bikes)) {
      const spec = inSI(sheet)
      if (known !== undefined && !known.includes(bike)) continue
      const fittedBike = bikeOf(spec, fitted?.(spec))
      const drawn = { bike: fittedBike, loadCase: loadCase(spec, fittedBike) }
      compare(calculator, { ...given, bike }, outputs(tell(drawn), drawn, spec))
    }
  }
  for (const { calculator, given, others, allowed } of singleCases(bikes))
    compare(calculator, given, others, allowed)
  return [...worst.values()]
}
