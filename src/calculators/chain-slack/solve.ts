import {
  chainAt,
  type ChainDrive,
  DomainError,
  leastSlack,
  runningRadii,
  sample,
  slackAt,
  tightestTravel,
} from '../../core/index.ts'
import type { CodeOf, InputOf, OutputOf } from '../../machine/values.ts'
import { InputRefusal, defineWork } from '../../machine/work.ts'
import type { Interval } from '../../units/interval.ts'
import type statement from './statement.ts'

type Values = InputOf<typeof statement>

type Estimate = Interval & { value: number }

const INCH = 0.0254
const PITCHES = { half: INCH / 2, fiveEighths: (INCH * 5) / 8, threeQuarters: (INCH * 3) / 4 }

/** A chain drive as the reader described it, and the wheel's travel in it: a back that was raised hangs lower, so its travel starts below 0. */
interface Situation {
  drive: ChainDrive
  from: number
  to: number
  read: { slack: number; at: number }
  /** where the same reading is taken now */
  now: number
}

function situationOf(input: Values): Situation {
  const { frontTeeth, rearTeeth, armLength, sprocketAhead, sprocketAbove, axleBelow } = input
  for (const [id, count] of Object.entries({ frontTeeth, rearTeeth }))
    if (!Number.isInteger(count)) throw new InputRefusal(id, 'Teeth are whole. Count them again')
  if (input.at > input.travel)
    throw new InputRefusal(
      'at',
      'The travel used is more than the full travel. Check it, and the full travel under “More values”',
    )
  return {
    drive: {
      pitch: PITCHES[input.pitch],
      frontTeeth,
      rearTeeth,
      armLength,
      axleHeight: -axleBelow,
      frontSprocket: { x: sprocketAhead, z: sprocketAbove },
    },
    from: -input.raise,
    to: input.travel - input.raise,
    read: { slack: input.slack, at: input.at },
    now: input.at - input.raise,
  }
}

/** The core's refusals as words at the field where the drive cannot be built: an arm that does not reach, sprockets that overlap. */
function buildable<Result>(work: () => Result): Result {
  try {
    return work()
  } catch (error) {
    if (!(error instanceof DomainError)) throw error
    if (error.parameter === 'travel')
      throw new InputRefusal(
        'armLength',
        'This swing arm is too short for the travel: the wheel would pass beside the pivot. Check its length, the axle’s height and the travel',
      )
    if (error.parameter === 'centreDistance')
      throw new InputRefusal(
        'armLength',
        'With this swing arm the sprockets overlap somewhere in the travel. Check its length and the sprocket’s place',
      )
    throw error
  }
}

/** A slack at one place, with the ends that the reading's ± gives it. */
function within(situation: Situation, plusMinus: number, travel: number): Estimate {
  const { drive, read } = situation
  const of = (slack: number): number =>
    slackAt(drive, { ...read, slack: Math.max(0, slack) }, travel).slack
  return {
    value: of(read.slack),
    low: of(read.slack - plusMinus),
    high: of(read.slack + plusMinus),
  }
}

function standsAt({ low, high, value }: Estimate): CodeOf<typeof statement, 'stands'> {
  if (low > 0) return 'slack'
  return high <= 0 || value <= 0 ? 'tight' : 'may-tighten'
}

/** SI in, SI out. */
function compute(input: Values): OutputOf<typeof statement> {
  return buildable(() => {
    const situation = situationOf(input)
    const { drive, from, to, now } = situation
    const place = tightestTravel(drive, from, to)
    const at = (travel: number): Estimate => within(situation, input.readingPlusMinus, travel)
    const tightest = at(place)
    const here = chainAt(drive, now)
    return {
      tightest,
      slackNow: at(now),
      least: leastSlack(drive, now, from, to),
      stands: standsAt(tightest),
      tightestAt: place - from,
      hanging: at(from),
      full: at(to),
      growth: chainAt(drive, place).length - here.length,
      run: here.run,
    }
  })
}

/** Before: the back as high as it was. */
const baseline = () => ({ raise: 0 })

const STEPS = 40

/** Slack along the travel, and the drive with the wheel hanging and where the chain is tightest, from the pivot [SI]. */
function picture(input: Values) {
  return buildable(() => {
    const situation = situationOf(input)
    const { drive, from, to, now } = situation
    const place = tightestTravel(drive, from, to)
    const curve = sample(from, to, STEPS).map((travel): [number, number] => [
      travel - from,
      within(situation, 0, travel).value,
    ])
    return {
      curve,
      reading: { travel: now - from, slack: within(situation, 0, now).value },
      radii: runningRadii(drive),
      sprocket: drive.frontSprocket,
      hanging: chainAt(drive, from),
      tightest: chainAt(drive, place),
    }
  })
}

/** What the figure draws. */
export type Picture = ReturnType<typeof picture>

export default defineWork<typeof statement>({
  solve(input) {
    const outputs = compute(input)
    return { outputs, picture: () => picture(input) }
  },
  baseline,
})
