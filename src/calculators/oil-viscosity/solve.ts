import {
  blendViscosity,
  isoViscosityClass,
  sample,
  viscosityAt,
  viscosityFromIndex,
  viscosityIndex,
} from '../../core/index.ts'
import type { ViscosityReading } from '../../core/index.ts'
import type { CodeOf, InputOf, OutputOf } from '../../machine/values.ts'
import { InputRefusal, defineWork } from '../../machine/work.ts'
import type statement from './statement.ts'

const AT_40 = 313.15
const AT_100 = 373.15
/** The data sheet's second figure begins at 2 mm²/s in ASTM D2270. */
const LEAST_AT_100 = 2e-6
/** An index below this is a slip of the pen: the worst mineral oils lie near −60 (from memory). */
const LEAST_INDEX = -200
/** Temperatures of the table [K]. */
const TEMPERATURES = [-10, 0, 10, 20, 30, 40, 60, 80, 100].map((celsius) => celsius + 273.15)

type Values = InputOf<typeof statement>
type Oil = readonly [ViscosityReading, ViscosityReading]

function readings(oil: 'one' | 'two', at40: number, at100: number): Oil {
  if (at100 >= at40) {
    const field = oil === 'one' ? 'at100' : 'otherAt100'
    throw new InputRefusal(
      field,
      `Oil ${oil} must be thinner at 100 °C than at 40 °C, since oil thins as it warms. Check both figures on the data sheet`,
    )
  }
  if (at100 >= LEAST_AT_100 && viscosityIndex({ at40, at100 }) < LEAST_INDEX) {
    const field = oil === 'one' ? 'at100' : 'otherAt100'
    throw new InputRefusal(
      field,
      `Oil ${oil} at 100 °C is far too low for its viscosity at 40 °C: no oil thins so much. Check both figures on the data sheet`,
    )
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
    throw new InputRefusal(
      field,
      'No oil this thin at 40 °C has that viscosity index by ASTM D2270. Enter a higher index, or the viscosity at 100 °C',
    )
  }
}

function oilsOf(input: Values): { one: Oil; two: Oil } {
  const byIndex = input.known === 'index'
  return {
    one: readings(
      'one',
      input.at40,
      byIndex ? at100FromIndex('index', input.at40, input.index) : input.at100,
    ),
    two: readings(
      'two',
      input.otherAt40,
      byIndex ? at100FromIndex('otherIndex', input.otherAt40, input.otherIndex) : input.otherAt100,
    ),
  }
}

function mixAt(one: Oil, two: Oil, share: number, temperature: number): number {
  return blendViscosity([
    { share: 1 - share, viscosity: viscosityAt(temperature, one) },
    { share, viscosity: viscosityAt(temperature, two) },
  ])
}

/** The code of the grade [m²/s at 40 °C]. */
const classOf = (at40: number): CodeOf<typeof statement, 'isoClass'> => {
  const grade = isoViscosityClass(at40)
  return grade === null ? 'between' : (`vg${grade}` as CodeOf<typeof statement, 'isoClass'>)
}

/** SI in, SI out. */
function compute(input: Values, oils: ReturnType<typeof oilsOf>): OutputOf<typeof statement> {
  const { one, two } = oils
  const mix = (temperature: number): number => mixAt(one, two, input.share, temperature)
  const [at40, at100] = [mix(AT_40), mix(AT_100)]
  return {
    viscosity: mix(input.temperature),
    isoClass: classOf(at40),
    coldRatio: mix(input.cold) / mix(input.warm),
    mixAt40: at40,
    index: at100 >= LEAST_AT_100 && at100 < at40 ? viscosityIndex({ at40, at100 }) : null,
    one: viscosityAt(input.temperature, one),
    two: viscosityAt(input.temperature, two),
    mixAt100: at100,
  }
}

/** Before: oil one alone. */
const baseline = () => ({ share: 0 })

/** Viscosity [m²/s] of both oils and their mix against temperature [K], with the readings of each and the rows of the table. */
function picture(input: Values, oils: ReturnType<typeof oilsOf>) {
  const { one, two } = oils
  const along = sample(258.15, 372.15, 57)
  const curve = (at: (temperature: number) => number): [number, number][] =>
    along.map((temperature) => [temperature, at(temperature)])
  return {
    one: curve((temperature) => viscosityAt(temperature, one)),
    two: curve((temperature) => viscosityAt(temperature, two)),
    mix: curve((temperature) => mixAt(one, two, input.share, temperature)),
    readings: { one, two },
    rows: TEMPERATURES.map(
      (temperature) =>
        [
          temperature,
          viscosityAt(temperature, one),
          viscosityAt(temperature, two),
          mixAt(one, two, input.share, temperature),
        ] as const,
    ),
  }
}

/** What the figure draws. */
export type Picture = ReturnType<typeof picture>

export default defineWork<typeof statement>({
  solve(input) {
    const oils = oilsOf(input)
    return { outputs: compute(input, oils), picture: () => picture(input, oils) }
  },
  baseline,
})
