import type { Cell, Remark, RemarkContext } from './define.ts'
import { ends, middle } from './interval.ts'
import type { Say } from './say.ts'
import type { inputs, outputs } from './stance.fields.ts'

type Context = RemarkContext<typeof inputs, typeof outputs>
type State = Pick<Context, 'input' | 'output'>

/** Two readings of a bathroom scale that shows half kilograms can differ by 1 kg with nothing changed [N]. */
const SCALE_NOISE = 9.80665
/** A rule reads to half a millimetre, twice [m]. */
const RULE_NOISE = 1e-3
/** Past this share of the trail a change is more than one small step: 5 mm at the tubes is 1 %. */
const TRAIL_STEP = 0.02

const number = (value: Cell): number => middle(value) ?? 0

function moved(label: string, change: number, say: Say): string {
  if (Math.abs(change) < RULE_NOISE / 2) return `the ${label} stays where it was`
  return `the ${label} stands ${say.quantity(Math.abs(change), 'mm', 1)} ${change > 0 ? 'deeper' : 'higher'} in its travel`
}

function changes(now: State, before: State, say: Say): Remark[] {
  const change = (id: keyof State['output']): number => number(now.output[id]) - number(before.output[id])
  const trail = change('trail') / number(before.output.trail)
  const load = change('frontLoad')
  const size = say.quantity(Math.abs(load), 'kg load', 1)
  const [front, rear] = [change('frontTravel'), change('rearTravel')]
  const still = Math.max(Math.abs(front), Math.abs(rear)) < RULE_NOISE / 2
  const both = still ? 'both ends stay where they were in their travel' : `${moved('front', front, say)}, and ${moved('rear', rear, say)}`
  const list: Remark[] = [
    {
      kind: 'reading',
      text: `${both.charAt(0).toUpperCase()}${both.slice(1)}. Trail is ${say.quantity(Math.abs(trail), '%', 1)} ${trail < 0 ? 'shorter' : 'longer'}.`,
    },
  ]
  const small = Math.abs(load) < SCALE_NOISE
  list.push({
    kind: 'reading',
    text: `The front tyre carries ${size} ${load < 0 ? 'less' : 'more'}${small ? ': the direction is as the trade says, the size too small for a bathroom scale' : ''}.`,
  })
  if (Math.abs(trail) >= TRAIL_STEP) {
    list.push({
      kind: 'caution',
      caution: trail < 0 ? 'change-of-geometry-and-speed' : 'small-steps-only',
      text: `Trail changes by ${say.quantity(Math.abs(trail), '%', 1)}, more than one small step.`,
    })
  }
  return list
}

function stops({ output, input }: State): Remark[] {
  const list: Remark[] = []
  for (const [end, stop] of [
    ['front', output.frontStop],
    ['rear', output.rearStop],
  ] as const) {
    if (stop === 'on its stop')
      list.push({ kind: 'limit', text: `The ${end} has used all its travel: it stands on its stop, and the spring no longer carries it alone.` })
    if (stop === 'coil-bound') list.push({ kind: 'limit', text: `The ${end} spring’s coils touch before the travel ends. A bump from here is metal on metal.` })
    if (stop === 'fully extended' && !(end === 'rear' && input.situation === 'braking')) {
      list.push({ kind: 'limit', text: `The ${end} stands on its top stop: more preload lifts nothing, it only raises the load needed to leave the stop.` })
    }
  }
  if (output.rearStop === 'fully extended' && input.situation === 'braking')
    list.push({ kind: 'reading', text: 'The rear is fully extended: on the brakes it has no more height to give.' })
  return list
}

function lifting({ input, output }: State, say: Say): Remark[] {
  const lift = typeof output.liftDeceleration === 'number' ? output.liftDeceleration : null
  if (number(output.frontLoad) < 0) return [{ kind: 'limit', text: 'The front wheel is off the ground: so much mass sits behind the rear contact.' }]
  if (input.situation !== 'braking' || lift === null || input.deceleration < lift) return []
  return [
    {
      kind: 'limit',
      text: `Past ${say.quantity(lift, 'g', 2)} the rear wheel is off the ground. The figures are as if the road could pull it down: read them at ${say.quantity(lift, 'g', 2)}.`,
    },
  ]
}

/** Another height at either end leaves the side stand and the clearances other than the maker set them. */
function heights({ input }: State): Remark[] {
  const list: Remark[] = []
  if (input.shockLengthChange !== 0 || input.rearPreloadChange !== 0 || input.rearRadiusChange !== 0)
    list.push(
      { kind: 'caution', caution: 'chain-slack-after-rear-change', text: 'Check the chain’s slack after the height has changed.' },
      { kind: 'caution', caution: 'stand-angle-after-height-change', text: 'The stand now leans the bike at a different angle.' },
    )
  if (input.tubeRaise > 0 || input.frontRadiusChange > 0)
    list.push({ kind: 'caution', caution: 'clearance-at-full-travel', text: 'The front tyre comes nearer to yokes and radiator at full travel.' })
  return list
}

/** What the whole bike's figures mean, before against now, and where they stop being true. */
export function remarks({ input, output, before, say }: Context): readonly Remark[] {
  const now = { input, output }
  const same = before && (['frontTravel', 'rearTravel', 'trail', 'frontLoad'] as const).every((id) => number(before.output[id]) === number(output[id]))
  const list: Remark[] = []
  if (before && !same) list.push(...changes(now, before, say))
  else {
    const share = say.quantity(number(output.frontTravelShare), '%', 0)
    list.push({
      kind: 'reading',
      text: `The front stands ${say.quantity(number(output.frontTravel), 'mm', 1)} deep, ${share} of its travel; the rear ${say.quantity(number(output.rearTravel), 'mm', 1)}.`,
    })
  }
  list.push(...stops(now), ...lifting(now, say))
  if (input.situation === 'leaning')
    list.push({
      kind: 'reading',
      text: 'A bend presses the bike along its own middle line: the loads are more than a scale would read, and both ends sit deeper.',
    })
  const width = ends(output.frontBand)
  if (width && width[1] > width[0])
    list.push({ kind: 'limit', text: `Friction can hold the front anywhere from ${say.number(width[0], 'mm', 0)} to ${say.quantity(width[1], 'mm', 0)}.` })
  list.push(nextStep(now, say), ...heights(now))
  return list
}

function nextStep({ input, output }: State, say: Say): Remark {
  const exposed = say.quantity(number(output.exposedTube), 'mm', 0)
  if (input.situation === 'braking' || input.situation === 'leaning') {
    return {
      kind: 'next',
      text: `Put a cable tie round a fork tube and ride. It marks the deepest stroke, bumps included; settled, the calculation expects ${exposed} of tube.`,
    }
  }
  return {
    kind: 'next',
    text: `Push the front down and let it rise, then lift it and let it sink. The calculation expects the mean of both readings of the tube at ${exposed}.`,
  }
}
