import { bikeOf, forkOf } from './bikes.ts'
import { defineCalculator, InputRefusal } from './define.ts'
import type { InputValues, Remark, WorkedCheck } from './define.ts'
import { forkForce, forkStack, forkTravel, METRIC_THREAD_PITCHES, solveStance, spacerFor, springForce, turnsToTravel } from '../core/index.ts'
import type { CoilGroup, Fork } from '../core/index.ts'

/** Spring travel kept clear of coil bind [m]: a coil that is 1 % longer or thicker than the data sheet says uses up about as much. Common practice, no source. */
export const BIND_CLEARANCE = 3e-3
/** Force on a cap [N] from which it jumps out of your hand as its thread ends: the weight of two kilograms. Common practice, no source. */
export const CAP_JUMPS = 20

const THREADS = {
  'M8x1': 'M8 × 1, 1 mm a turn',
  'M10x1': 'M10 × 1, 1 mm a turn',
  'M10x1.25': 'M10 × 1.25, 1.25 mm a turn',
  'M12x1': 'M12 × 1, 1 mm a turn',
  'M12x1.25': 'M12 × 1.25, 1.25 mm a turn',
  'M12x1.5': 'M12 × 1.5, 1.5 mm a turn',
  'M14x1.5': 'M14 × 1.5, 1.5 mm a turn',
  'M20x1': 'M20 × 1, 1 mm a turn',
  'M20x1.5': 'M20 × 1.5, 1.5 mm a turn',
  measured: 'another: I measured it',
} as const

const inputs = {
  tubeDepth: { kind: 'quantity', label: 'Depth, cap seat to spring seat', hint: 'Leg fully extended. A cartridge seats the spring elsewhere: measure to that.', procedure: 'cut-a-spacer', quantity: 'length', unit: 'mm', range: [150, 900], step: 0.5, default: 478 },
  springLength: { kind: 'quantity', label: 'Free length of the spring', procedure: 'cut-a-spacer', quantity: 'length', unit: 'mm', range: [80, 700], step: 0.5, default: 335 },
  spacerLength: { kind: 'quantity', label: 'Spacer length', hint: '0 where there is none.', procedure: 'cut-a-spacer', quantity: 'length', unit: 'mm', range: [0, 400], step: 0.5, default: 125 },
  turnsIn: { kind: 'quantity', label: 'Adjuster, turns in from fully out', hint: '0 where there is no adjuster.', procedure: 'count-and-set-clickers', quantity: 'turns', unit: 'turns', range: [0, 40], step: 0.25, default: 7 },
  capReach: { kind: 'quantity', label: 'Reach of cap and adjuster below the cap seat', hint: 'Adjuster fully out. Below 0 if the stack rises into the cap.', procedure: 'cut-a-spacer', more: true, quantity: 'length', unit: 'mm', range: [-40, 120], step: 0.5, default: 24 },
  washers: { kind: 'table', label: 'Washers', more: true, columns: [{ id: 'thickness', label: 'Thickness', quantity: 'length', unit: 'mm', range: [0, 30] }], rows: [1, 6], default: [[2]] },
  thread: { kind: 'choice', label: 'Adjuster thread', hint: 'Pitches from ISO 261. One turn travels one pitch.', more: true, options: THREADS, default: 'M20x1' },
  pitch: { kind: 'quantity', label: 'Adjuster travel per turn', hint: 'Ten turns, measured, divided by ten.', more: true, when: { thread: 'measured' }, quantity: 'length', unit: 'mm', range: [0.2, 5], step: 0.05, default: 1 },
  range: { kind: 'quantity', label: 'Adjuster range, fully out to fully in', more: true, quantity: 'length', unit: 'mm', range: [0, 40], step: 0.5, default: 15 },
  step: { kind: 'quantity', label: 'Turns from one row of the table to the next', more: true, quantity: 'turns', unit: 'turns', range: [0.5, 10], step: 0.5, default: 1 },
  wanted: { kind: 'quantity', label: 'Preload wanted at this setting', more: true, quantity: 'length', unit: 'mm', range: [0, 60], step: 0.5, default: 15 },
  rate: { kind: 'quantity', label: 'Spring rate, one leg', procedure: 'test-a-spring', more: true, quantity: 'rate', unit: 'N/mm', range: [2, 25], step: 0.1, default: 9, typical: [7, 11], typicalFrom: 'common practice for road bikes, no published source' },
  solidLength: { kind: 'quantity', label: 'Length with the coils touching', hint: 'The coil rate calculator gives it from wire and coils.', more: true, optional: true, empty: 'not known', quantity: 'length', unit: 'mm', range: [30, 600], step: 0.5 },
  bike: { kind: 'bike', label: 'Bike on which the height is read', more: true, default: 'middleweight-roadster' },
} as const

type Values = InputValues<typeof inputs>

const outputs = {
  preload: { label: 'Preload at this setting', quantity: 'length', unit: 'mm', digits: 1, lead: true },
  spacer: { label: 'Spacer for the preload wanted', quantity: 'length', unit: 'mm', digits: 1, lead: true },
  frontTravel: { label: 'Fork used, bike alone', quantity: 'length', unit: 'mm', digits: 1 },
  capForce: { label: 'Spring force on the cap, wheel hanging', quantity: 'force', unit: 'N', digits: 0 },
  screw: { label: 'Adjuster wound in', quantity: 'length', unit: 'mm', digits: 2, more: true },
  fullTravelForce: { label: 'Force at full travel, both legs, gas slow', quantity: 'force', unit: 'N', digits: 0, more: true },
  bindMargin: { label: 'Spring travel left at full fork travel', quantity: 'length', unit: 'mm', digits: 1, more: true },
  settings: {
    kind: 'table',
    label: 'Every setting of the adjuster',
    columns: [
      { id: 'turns', label: 'Turns in', quantity: 'turns', unit: 'turns', digits: 2 },
      { id: 'preload', label: 'Preload', quantity: 'length', unit: 'mm', digits: 1 },
      { id: 'rise', label: 'Front height against this setting', quantity: 'length', unit: 'mm', digits: 1, signed: true },
      { kind: 'text', id: 'state', label: 'Spring' },
    ],
  },
} as const

const checks: readonly WorkedCheck[] = [
  {
    title: 'A stack that fills the tube with 15 mm to spare',
    given: { tubeDepth: 478, capReach: 24, springLength: 335, spacerLength: 125, washers: [[2]], turnsIn: 7, thread: 'M20x1', rate: 9, wanted: 15 },
    expect: { preload: { value: 15, tolerance: 1e-6 }, spacer: { value: 125, tolerance: 1e-6 }, screw: { value: 7, tolerance: 1e-6 }, capForce: { value: 135, tolerance: 1e-6 } },
    working: 'Worked by hand: 335 + 125 + 2 + 24 + 7 turns of 1 mm = 493 mm in a depth of 478 mm, so 15 mm of preload. 9 N/mm × 15 mm = 135 N on the cap.',
  },
  {
    title: 'A spring 30 mm shorter in the same tube hangs loose',
    given: { tubeDepth: 478, capReach: 24, springLength: 305, spacerLength: 125, washers: [[2]], turnsIn: 7, thread: 'M20x1', rate: 9, wanted: 15 },
    expect: { preload: { value: -15, tolerance: 1e-6 }, spacer: { value: 155, tolerance: 1e-6 }, capForce: { value: 0, tolerance: 1e-9 } },
    working: 'Worked by hand: 305 + 125 + 2 + 24 + 7 = 463 mm, 15 mm short of 478 mm. For 15 mm of preload the spacer must be 478 + 15 − 305 − 2 − 24 − 7 = 155 mm.',
  },
  {
    title: 'Five turns of a fine M10 thread',
    given: { turnsIn: 5, thread: 'M10x1.25' },
    expect: { screw: { value: 6.25, tolerance: 1e-6 } },
    working: 'ISO 261: M10 × 1.25 has a pitch of 1.25 mm. 5 × 1.25 = 6.25 mm.',
  },
]

export default defineCalculator({
  id: 'fork-stack',
  version: 1,
  title: 'Spacer, washers and adjuster in a fork',
  question: 'Which spring?',
  answers: 'How much preload a fork’s stack gives at each setting of its adjuster, and how long to cut the spacer.',
  assumes: ['Lengths are taken with the leg fully extended and the spring at its free length.', 'Both legs hold the same stack.', 'The height is read with the bike on its wheels, without a rider.'],
  leavesOut: [
    'Friction: the bike settles anywhere within its friction band, often 5 mm or more.',
    'The top-out spring’s own length where the spring seats on it: measure the depth with the leg hanging.',
    'Squash of a plastic spacer, a few tenths of a millimetre.',
  ],
  inputs,
  outputs,
  compute(input) {
    const { screw, preload, stack } = setUp(input)
    const spring = springOf(input.rate, input.springLength, input.solidLength)
    const reference = heightAt(input, spring, preload)
    const rows = settingsOf(input).map((turns) => {
      const at = turnsToTravel({ turns, pitch: pitchOf(input) })
      const [row] = forkStack({ ...stack, spacerLength: input.spacerLength, settings: [at] })
      const height = heightAt(input, spring, row!.preload)
      return [turns, row!.preload, height === null || reference === null ? null : reference - height, stateOf(spring, row!.preload)]
    })
    return {
      preload,
      spacer: spacerFor({ ...stack, setting: screw, preload: input.wanted }),
      frontTravel: reference,
      capForce: holds(spring, preload) ? springForce(spring, preload) : null,
      screw,
      fullTravelForce: fullForce(input, spring, preload),
      bindMargin: input.solidLength === undefined ? null : input.springLength - input.solidLength - preload - input.bike.fork.travel * 1e-3,
      settings: rows,
    }
  },
  baseline: () => ({ turnsIn: 0 }),
  picture(input) {
    const { screw, preload } = setUp(input)
    return { screw, preload, adjusterRange: input.range }
  },
  remarks({ input, output, before, say }) {
    const { preload } = output
    const remarks: Remark[] = []
    if (typeof preload === 'number') remarks.push(...readingOf(preload, before?.output.preload, heightChange(output.frontTravel, before?.output.frontTravel), say.quantity, say.change))
    if (typeof output.spacer === 'number' && output.spacer < 0) {
      remarks.push({ kind: 'next', text: `Even without a spacer the stack is ${say.quantity(-output.spacer, 'mm', 1)} too long for the preload wanted. It takes a shorter spring.` })
    } else if (typeof output.spacer === 'number' && Math.abs(output.spacer - input.spacerLength) > 5e-4) {
      remarks.push({ kind: 'next', text: `For ${say.quantity(input.wanted, 'mm', 1)} of preload at this setting, cut the spacer to ${say.quantity(output.spacer, 'mm', 1)}. Cut both legs alike, ends square.` })
    }
    if (typeof output.capForce === 'number' && output.capForce >= CAP_JUMPS) {
      remarks.push({ kind: 'caution', caution: 'cap-under-spring-force', text: `With the wheel hanging the spring pushes each cap with ${say.quantity(output.capForce, 'N', 0)}.` })
    }
    if (typeof output.bindMargin === 'number' && output.bindMargin < BIND_CLEARANCE) {
      const short = output.bindMargin < 0 ? `The coils touch ${say.quantity(-output.bindMargin, 'mm', 1)} before the fork reaches its stop.` : `Only ${say.quantity(output.bindMargin, 'mm', 1)} of spring travel is left when the fork reaches its stop.`
      remarks.push({ kind: 'limit', text: `${short} Touching coils stop the fork dead: use less preload or another spring.` })
    }
    return remarks
  },
  checks,
})

const pitchOf = (input: Values): number => (input.thread === 'measured' ? input.pitch : METRIC_THREAD_PITCHES[input.thread]!)

function setUp(input: Values) {
  const screw = turnsToTravel({ turns: input.turnsIn, pitch: pitchOf(input) })
  if (screw > input.range + 1e-9) {
    const most = Math.floor((input.range / pitchOf(input)) * 4) / 4
    throw new InputRefusal('turnsIn', `Adjuster, turns in from fully out: its range ends after ${most} turns of this thread. Enter fewer turns or a longer range`)
  }
  const stack = { tubeDepth: input.tubeDepth, capReach: input.capReach, springLength: input.springLength, washers: input.washers.map(([thickness = 0]) => thickness) }
  const [setting] = forkStack({ ...stack, spacerLength: input.spacerLength, settings: [screw] })
  return { screw, stack, preload: setting!.preload }
}

/** Turns of every row: from fully out in even steps, the end of the range included. */
function settingsOf(input: Values): number[] {
  const most = input.range / pitchOf(input)
  const step = Math.max(input.step, most / 40)
  const turns: number[] = []
  for (let at = 0; at < most - 1e-9; at += step) turns.push(at)
  return [...turns, most]
}

function springOf(rate: number, free: number, solid: number | undefined): CoilGroup[] {
  if (solid === undefined) return [{ rate }]
  if (solid >= free) throw new InputRefusal('solidLength', 'Length with the coils touching must be below the free length of the spring')
  return [{ rate, closes: free - solid }]
}

const holds = ([group]: CoilGroup[], preload: number): boolean => group?.closes === undefined || preload <= group.closes

/** The bike's fork with this stack; null where the cap would press the coils solid before it reaches its thread. */
function forkWith(input: Values, spring: CoilGroup[], preload: number): Fork | null {
  if (!holds(spring, preload)) return null
  const fork = forkOf(input.bike)
  return { ...fork, legs: fork.legs.map((leg) => ({ ...leg, spring, preload })) }
}

/** Fork travel used with the bike alone on its wheels [m], the load along the fork as the standard bike has it: it hardly depends on the height. */
function heightAt(input: Values, spring: CoilGroup[], preload: number): number | null {
  const fork = forkWith(input, spring, preload)
  return fork && forkTravel(fork, solveStance(bikeOf(input.bike)).forkForce)
}

function fullForce(input: Values, spring: CoilGroup[], preload: number): number | null {
  const fork = forkWith(input, spring, preload)
  const bound = spring[0]?.closes !== undefined && preload + input.bike.fork.travel * 1e-3 > spring[0].closes
  return fork && !bound ? forkForce(fork, fork.travel) : null
}

function stateOf(spring: CoilGroup[], preload: number): string {
  if (preload < 0) return 'loose'
  return holds(spring, preload) ? 'held' : 'coils touch'
}

const heightChange = (now: unknown, was: unknown): number | null => (typeof now === 'number' && typeof was === 'number' ? was - now : null)

type Write = (si: number, unit: 'mm', digits: number) => string

function readingOf(preload: number, was: unknown, rise: number | null, quantity: Write, change: Write): Remark[] {
  if (preload < 0) {
    return [
      { kind: 'reading', text: `The spring hangs loose by ${quantity(-preload, 'mm', 1)} with the wheel hanging. It can step off its seat, and carries nothing for that much of the travel.` },
      { kind: 'next', text: 'Measure the depth and the spring again before you cut. Then lengthen the spacer.' },
    ]
  }
  if (typeof was === 'number' && rise !== null && Math.abs(preload - was) > 1e-6) {
    return [{ kind: 'reading', text: `Preload has changed by ${change(preload - was, 'mm', 1)} and the front by ${change(rise, 'mm', 1)}. The rate has not changed.` }]
  }
  return [{ kind: 'reading', text: `The stack holds the spring ${quantity(preload, 'mm', 1)} shorter than its free length. Preload moves the bike along its travel and leaves the rate alone.` }]
}
