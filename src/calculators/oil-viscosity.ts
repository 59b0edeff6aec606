import { defineCalculator, InputRefusal } from './define.ts'
import type { InputValues, Remark } from './define.ts'
import { middle } from './interval.ts'
import { blendViscosity, isoViscosityClass, viscosityAt, viscosityFromIndex, viscosityIndex } from '../core/index.ts'
import type { ViscosityReading } from '../core/index.ts'

/** Cold to warm [times] from which a fork feels like another fork until it has warmed: gap flow, which sets slow damping, goes with viscosity. Common practice, no source. */
export const COLD_IS_ANOTHER_FORK = 3
/** Difference of viscosity [1] below which two oils of one class may not be told apart: a class spans ±10 % (ISO 3448). */
export const SAME_CLASS = 0.1

const AT_40 = 313.15
const AT_100 = 373.15
/** The data sheet's second figure begins at 2 mm²/s in ASTM D2270. */
const LEAST_AT_100 = 2e-6
/** An index below this is a slip of the pen: the worst mineral oils lie near −60 (from memory). */
const LEAST_INDEX = -200
const TEMPERATURES = [-10, 0, 10, 20, 30, 40, 60, 80, 100].map((celsius) => celsius + 273.15)

const viscosity = { kind: 'quantity', quantity: 'viscosity', unit: 'mm²/s' } as const
const INDEX = {
  kind: 'quantity',
  quantity: 'ratio',
  unit: '',
  range: [60, 400],
  step: 1,
  typical: [100, 200],
  typicalFrom: 'fork oils commonly state 100 to 200; plain mineral oil about 100',
} as const

const inputs = {
  at40: {
    ...viscosity,
    label: 'Oil one at 40 °C',
    hint: 'From its data sheet, in cSt or mm²/s: the same. The number on the bottle is no viscosity.',
    range: [7.1, 200],
    step: 0.1,
    default: 32,
  },
  otherAt40: { ...viscosity, label: 'Oil two at 40 °C', range: [7.1, 200], step: 0.1, default: 15 },
  share: { kind: 'quantity', label: 'Share of oil two in the fork', quantity: 'share', unit: '%', range: [0, 100], step: 1, default: 50 },
  temperature: { kind: 'quantity', label: 'Temperature of the fork', quantity: 'temperature', unit: '°C', range: [-15, 100], step: 1, default: 20 },
  known: {
    kind: 'choice',
    label: 'The data sheets also give',
    more: true,
    options: { at100: 'viscosity at 100 °C', index: 'viscosity index' },
    default: 'index',
  },
  at100: { ...viscosity, label: 'Oil one at 100 °C', more: true, when: { known: 'at100' }, range: [2, 60], step: 0.01, default: 5.36 },
  otherAt100: { ...viscosity, label: 'Oil two at 100 °C', more: true, when: { known: 'at100' }, range: [2, 60], step: 0.01, default: 3.79 },
  index: { ...INDEX, label: 'Viscosity index of oil one', more: true, when: { known: 'index' }, default: 100 },
  otherIndex: { ...INDEX, label: 'Viscosity index of oil two', more: true, when: { known: 'index' }, default: 150 },
  cold: { kind: 'quantity', label: 'Temperature on a cold start', more: true, quantity: 'temperature', unit: '°C', range: [-15, 60], step: 1, default: 10 },
  warm: { kind: 'quantity', label: 'Temperature once warm', more: true, quantity: 'temperature', unit: '°C', range: [0, 100], step: 1, default: 40 },
} as const

const outputs = {
  viscosity: { label: 'Viscosity in the fork', quantity: 'viscosity', unit: 'mm²/s', digits: 1, lead: true },
  isoClass: { kind: 'text', label: 'ISO class at 40 °C' },
  coldRatio: { label: 'Cold start against warm, times', quantity: 'ratio', unit: '', digits: 2, lead: true },
  mixAt40: { label: 'In the fork at 40 °C', quantity: 'viscosity', unit: 'mm²/s', digits: 1 },
  index: { label: 'Viscosity index in the fork', quantity: 'ratio', unit: '', digits: 0 },
  one: { label: 'Oil one at the fork’s temperature', quantity: 'viscosity', unit: 'mm²/s', digits: 1, more: true },
  two: { label: 'Oil two at the fork’s temperature', quantity: 'viscosity', unit: 'mm²/s', digits: 1, more: true },
  mixAt100: { label: 'In the fork at 100 °C', quantity: 'viscosity', unit: 'mm²/s', digits: 2, more: true },
} as const

type Values = InputValues<typeof inputs>
type Oil = readonly [ViscosityReading, ViscosityReading]

export default defineCalculator({
  id: 'oil-viscosity',
  version: 1,
  title: 'Viscosity of fork oil, warm and cold',
  question: 'Is the oil right?',
  answers: 'How thick an oil, or a mix of two, is at your fork’s temperature.',
  assumes: ['Both figures come from the same data sheet.', 'The oils mix, and share the base and additives that let them.'],
  leavesOut: [
    'What viscosity does to damping: slow damping through gaps goes with it, fast damping through holes hardly does. Five times the viscosity is not five times the damping.',
    'Thickening additives, which can put a real mix several per cent off.',
    'Age: an oil with a high index loses some of it as it is worked.',
  ],
  inputs,
  outputs,
  compute(input) {
    const { one, two } = oilsOf(input)
    const mix = (temperature: number): number => mixAt(one, two, input.share, temperature)
    const [at40, at100] = [mix(AT_40), mix(AT_100)]
    const grade = isoViscosityClass(at40)
    return {
      viscosity: mix(input.temperature),
      isoClass: grade === null ? 'between two classes' : `VG ${grade}`,
      coldRatio: mix(input.cold) / mix(input.warm),
      mixAt40: at40,
      index: at100 >= LEAST_AT_100 && at100 < at40 ? viscosityIndex({ at40, at100 }) : null,
      one: viscosityAt(input.temperature, one),
      two: viscosityAt(input.temperature, two),
      mixAt100: at100,
    }
  },
  baseline: () => ({ share: 0 }),
  picture(input) {
    const { one, two } = oilsOf(input)
    const along = Array.from({ length: 58 }, (_, place) => 258.15 + place * 2)
    const curve = (at: (temperature: number) => number): [number, number][] => along.map((temperature) => [temperature, at(temperature)])
    return {
      one: curve((temperature) => viscosityAt(temperature, one)),
      two: curve((temperature) => viscosityAt(temperature, two)),
      mix: curve((temperature) => mixAt(one, two, input.share, temperature)),
      readings: { one, two },
      rows: TEMPERATURES.map(
        (temperature) => [temperature, viscosityAt(temperature, one), viscosityAt(temperature, two), mixAt(one, two, input.share, temperature)] as const,
      ),
    }
  },
  remarks({ input, output, before, say }) {
    const remarks: Remark[] = []
    const now = middle(output.viscosity)
    const was = before === undefined ? null : middle(before.output.viscosity)
    if (now !== null && was !== null && Math.abs(now - was) > 1e-12) {
      const ratio = now / was
      const size = Math.abs(ratio - 1) < SAME_CLASS ? 'Two bottles of one class may differ as much.' : 'Slow damping follows; fast damping follows far less.'
      remarks.push({
        kind: 'reading',
        text: `At ${say.quantity(input.temperature, '°C', 0)} the fork holds ${say.quantity(now, 'mm²/s', 1)}, ${ratio.toFixed(2)} times what it was. ${size}`,
      })
    } else if (now !== null) {
      remarks.push({
        kind: 'reading',
        text: `At ${say.quantity(input.temperature, '°C', 0)} the oil has ${say.quantity(now, 'mm²/s', 1)}. Compare oils by this number at one temperature, not by what is printed as “weight”.`,
      })
    }
    const ratio = middle(output.coldRatio)
    if (ratio !== null && ratio >= COLD_IS_ANOTHER_FORK) {
      remarks.push({
        kind: 'reading',
        text: `At ${say.quantity(input.cold, '°C', 0)} it is ${ratio.toFixed(1)} times as thick as at ${say.quantity(input.warm, '°C', 0)}. Judge the damping once the fork is warm.`,
      })
    }
    if (output.isoClass === 'between two classes')
      remarks.push({ kind: 'limit', text: 'At 40 °C this lies between two classes of ISO 3448. No bottle has to match it.' })
    remarks.push({ kind: 'next', text: 'Take both figures from the oil’s data sheet. The maker’s manual says which oil the fork takes.' })
    return remarks
  },
})

function readings(oil: 'one' | 'two', at40: number, at100: number): Oil {
  if (at100 >= at40) {
    const field = oil === 'one' ? 'at100' : 'otherAt100'
    throw new InputRefusal(field, `Oil ${oil} at 100 °C must be below its viscosity at 40 °C. Oil thins as it warms`)
  }
  if (at100 >= LEAST_AT_100 && viscosityIndex({ at40, at100 }) < LEAST_INDEX) {
    const field = oil === 'one' ? 'at100' : 'otherAt100'
    throw new InputRefusal(field, `Oil ${oil} at 100 °C is far too low for its viscosity at 40 °C: no oil thins so much. Check both figures on the data sheet`)
  }
  return [
    { temperature: AT_40, viscosity: at40 },
    { temperature: AT_100, viscosity: at100 },
  ]
}

function at100FromIndex(field: 'index' | 'otherIndex', at40: number, index: number): number {
  try {
    return viscosityFromIndex({ at40, index })
  } catch {
    throw new InputRefusal(field, 'No oil this thin at 40 °C has that viscosity index by ASTM D2270. Enter a higher index, or the viscosity at 100 °C')
  }
}

function oilsOf(input: Values): { one: Oil; two: Oil } {
  const byIndex = input.known === 'index'
  return {
    one: readings('one', input.at40, byIndex ? at100FromIndex('index', input.at40, input.index) : input.at100),
    two: readings('two', input.otherAt40, byIndex ? at100FromIndex('otherIndex', input.otherAt40, input.otherIndex) : input.otherAt100),
  }
}

function mixAt(one: Oil, two: Oil, share: number, temperature: number): number {
  return blendViscosity([
    { share: 1 - share, viscosity: viscosityAt(temperature, one) },
    { share, viscosity: viscosityAt(temperature, two) },
  ])
}
