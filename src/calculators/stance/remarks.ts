import { defineRemarks, type Remark, type RemarkContext } from '../../machine/remark.ts'
import type { Interval } from '../../units/interval.ts'
import { ends, exists, isInterval, largest, sizeOf } from '../../units/interval.ts'
import type statement from './statement.ts'
import { clearances, heightCautions } from './heights.ts'

type Context = RemarkContext<typeof statement>
type Value = number | Interval

/** Two readings of a bathroom scale that shows half kilograms can differ by 1 kg with nothing changed [N]. */
const SCALE_NOISE = 9.80665
/** A rule reads to half a millimetre, twice [m]. */
const RULE_NOISE = 1e-3
/** Past this share of the trail a change is more than one small step: 5 mm at the tubes is 1 %. */
const TRAIL_STEP = 0.02
/** What two settled travels may be out by besides friction [m]: a rule, and a bike that is not quite upright. */
const READING = 2e-3

const DEPTH = ['higher', 'deeper'] as const

function moved(label: string, change: Value, { say }: Context): string {
  return largest(change) < RULE_NOISE / 2
    ? `the ${label} stays where it was`
    : `the ${label} sits ${say.moved(change, 'mm', 1, DEPTH)} in its travel`
}

function changes(context: Context): Remark[] {
  const { change, changeShare, say } = context
  const trail = changeShare.trail ?? 0
  const load = change.frontLoad ?? 0
  const [front, rear] = [change.frontTravel ?? 0, change.rearTravel ?? 0]
  const still = Math.max(largest(front), largest(rear)) < RULE_NOISE / 2
  const both = still
    ? 'both ends stay where they were in their travel'
    : `${moved('front', front, context)}, and ${moved('rear', rear, context)}`
  const small =
    largest(load) < SCALE_NOISE
      ? ': the direction is as the trade says, the size too small for a bathroom scale'
      : ''
  const list: Remark[] = [
    {
      kind: 'reading',
      text: `${both.charAt(0).toUpperCase()}${both.slice(1)}. Trail is ${say.moved(trail, '%', 1, ['shorter', 'longer'])}.`,
    },
    {
      kind: 'reading',
      text: `The front tyre carries ${say.moved(load, 'kg load', 1, ['less', 'more'])}${small}.`,
    },
  ]
  if (largest(trail) >= TRAIL_STEP) {
    const [low] = ends(trail) ?? [0]
    const text = `Trail is ${say.moved(trail, '%', 1, ['shorter', 'longer'])}, more than one small step (${say.quantity(TRAIL_STEP, '%', 0)}: common practice, no published source).`
    list.push({
      kind: 'caution',
      caution: low < 0 ? 'change-of-geometry-and-speed' : 'small-steps-only',
      text,
    })
  }
  return list
}

/** What is said of an end that stands at a stop, and of one that may. */
const AT_STOP: Readonly<Record<string, (end: string) => string>> = {
  bottomed: (end) =>
    `The ${end} has used all its travel: it is on its stop, and the spring no longer carries it alone.`,
  coilBound: (end) =>
    `The ${end} spring’s coils touch before the travel ends. A bump from here is metal on metal.`,
  extended: (end) =>
    `The ${end} is on its top stop: more preload lifts nothing, it only raises the load needed to leave the stop.`,
}

function stops({ verdicts, input, words }: Context): Remark[] {
  const list: Remark[] = []
  for (const [end, places] of [
    ['front', verdicts.frontStop],
    ['rear', verdicts.rearStop],
  ] as const) {
    for (const stop of places) {
      if (stop === 'none') continue
      if (end === 'rear' && stop === 'extended' && input.situation === 'braking') {
        const text =
          places.length === 1
            ? 'The rear is fully extended: on the brakes it has no more height to give.'
            : 'What you don’t know leaves open whether the rear is fully extended. If it is, it has no more height to give on the brakes.'
        list.push({ kind: 'reading', text })
      } else if (places.length === 1) list.push({ kind: 'limit', text: AT_STOP[stop]?.(end) ?? '' })
      else
        list.push({
          kind: 'limit',
          text: `What you don’t know of this bike leaves open whether the ${end} is ${words('frontStop', stop)}.`,
        })
    }
  }
  return list
}

function lifting({ input, output, say }: Context): Remark[] {
  const lift = ends(output.liftDeceleration)
  if ((ends(output.frontLoad)?.[0] ?? 0) < 0)
    return [
      {
        kind: 'limit',
        text: 'The front wheel is off the ground: so much mass sits behind the rear contact.',
      },
    ]
  if (
    input.situation !== 'braking' ||
    lift === null ||
    input.deceleration < lift[0] ||
    !exists(output.liftDeceleration)
  )
    return []
  const from = say.span(output.liftDeceleration, 'g', 2)
  if (isInterval(output.liftDeceleration))
    return [
      {
        kind: 'limit',
        text: `The rear wheel leaves the ground somewhere from ${from}, depending on what you don’t know of this bike. Past that the figures are as if the road could pull it down.`,
      },
    ]
  return [
    {
      kind: 'limit',
      text: `Past ${from} the rear wheel is off the ground. The figures are as if the road could pull it down: read them at ${from}.`,
    },
  ]
}

/** The springs of the sheet against what was read on the scales. */
function misfits({ inputSpread, output, say }: Context): Remark[] {
  const list: Remark[] = []
  for (const [end, misfit, read, band] of [
    ['front', output.scaleFrontMisfit, inputSpread.scaleFrontTravel, output.frontBand],
    ['rear', output.scaleRearMisfit, inputSpread.scaleRearTravel, output.rearBand],
  ] as const) {
    const [least, most] = ends(band) ?? [0, 0]
    if (!exists(misfit) || (ends(sizeOf(misfit))?.[0] ?? 0) <= (most - least) / 2 + READING)
      continue
    const by = say.moved(misfit, 'mm', 1, ['less', 'more'])
    list.push({
      kind: 'limit',
      text: `On the scales you read ${say.quantity(read, 'mm', 1)} of travel at the ${end}, ${by} than the springs of this sheet give under that load. Friction does not explain so much, so the rate, the preload or the air here is not your bike’s, and the heights hold for these springs only.`,
    })
  }
  return list
}

function nextStep(context: Context): Remark {
  const { input, output, before, change, say } = context
  const own = input.from !== 'bike'
  const tubeChange = change.exposedTube ?? 0
  const moves = own && before !== undefined && largest(tubeChange) >= RULE_NOISE / 2
  const expects = moves
    ? `${say.moved(tubeChange, 'mm', 1, ['less', 'more'])} of tube than before the change`
    : 'the tube where it was'
  const tube = exists(output.exposedTube) ? say.span(output.exposedTube, 'mm', 0) : ''
  if (input.situation === 'braking' || input.situation === 'leaning') {
    const settled = own ? '' : `; settled, the calculation expects ${tube} of tube`
    return {
      kind: 'next',
      text: `Put a cable tie round a fork tube and ride. It marks the deepest stroke, bumps included${settled}.`,
    }
  }
  const read = 'Push the front down and let it rise, then lift it and let it sink.'
  if (!own)
    return {
      kind: 'next',
      text: `${read} The calculation expects the mean of both readings of the tube at ${tube}.`,
    }
  return {
    kind: 'next',
    text: `${read} By the mean of both readings, the calculation expects ${expects}. Your own tube’s length is not known here.`,
  }
}

/** What the whole bike's figures mean, before against now, and where they stop being true. */
function remarks(context: Context): readonly Remark[] {
  const { input, output, before, change, say } = context
  const same = (['frontTravel', 'rearTravel', 'trail', 'frontLoad'] as const).every(
    (id) => change[id] === 0,
  )
  const list: Remark[] = []
  if (before && !same) list.push(...changes(context))
  else if (
    exists(output.frontTravel) &&
    exists(output.rearTravel) &&
    exists(output.frontTravelShare)
  ) {
    const share = say.span(output.frontTravelShare, '%', 0)
    const [front, rear] = [
      say.span(output.frontTravel, 'mm', 1),
      say.span(output.rearTravel, 'mm', 1),
    ]
    list.push({
      kind: 'reading',
      text: `The front sits ${front} deep, ${share} of its travel; the rear ${rear}.`,
    })
  }
  list.push(...misfits(context), ...stops(context), ...lifting(context))
  if (input.situation === 'leaning')
    list.push({
      kind: 'reading',
      text: 'A bend presses the bike along its own middle line: the loads are more than a scale would read, and both ends sit deeper.',
    })
  const width = ends(context.spread.frontBand)
  if (width && width[1] > width[0])
    list.push({
      kind: 'limit',
      text: `Friction can hold the front anywhere from ${say.range(width[0], width[1], 'mm', 0)}.`,
    })
  list.push(nextStep(context), ...heightCautions(input), ...clearances(input))
  return list
}

export default defineRemarks<typeof statement>(remarks)
