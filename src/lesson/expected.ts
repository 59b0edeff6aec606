import {
  closedGasVolume,
  flowCupTime,
  springForce,
  STANDARD_GRAVITY,
  tubeDrainTime,
  viscosityAt,
} from '../core/index.ts'
import { measured } from '../machine/measured.ts'
import type { Interval } from '../units/interval.ts'
import type { Unit } from '../units/units.ts'

/* What the stations’ rigs should show, with the band in which a careful reading lies (about 95 %). The rigs are invented. */

/** A number of a table: SI, the unit that it is defined in, and its decimals there. */
export interface Figure {
  si: number | (Interval & { value: number })
  unit: Unit
  digits: number
  /** in the unit that the instrument is marked in, whatever the class's units */
  marked?: boolean
}

export interface Expectation {
  columns: readonly string[]
  rows: readonly (readonly Figure[])[]
}

const figure = (si: Figure['si'], unit: Unit, digits: number): Figure => ({ si, unit, digits })

/** The press: one fork spring of 9.0 N/mm, as sold within 3 %; rule within half a millimetre, scale within 0.2 kg. */
const PRESS = { rate: 9000, rateWithin: 0.03 * 9000, rule: 0.5e-3, scale: 0.2 * STANDARD_GRAVITY }

function press(): Expectation {
  const rows = [10, 20, 30, 40, 50, 60, 70].map((millimetres) => {
    const squeeze = millimetres * 1e-3
    const force = measured(
      ([rate, length, miss]) => springForce([{ rate: rate! }], length!) + miss!,
      [PRESS.rate, squeeze, 0],
      [PRESS.rateWithin, PRESS.rule, PRESS.scale],
    )
    return [
      { ...figure(squeeze, 'mm', 0), marked: true },
      figure(force, 'N', 0),
      figure(force, 'kg load', 1),
    ]
  })
  return { columns: ['Squeezed by', 'Force', 'On the scale'], rows }
}

/** The syringe: 50 cm³ of air at sea level behind a piston of 27 mm; its rubber holds up to 3 N either way, the scale of the barrel is read within half a cubic centimetre. */
const SYRINGE = { volume: 50e-6, pressure: 101_325, area: (Math.PI / 4) * 0.027 ** 2 }
const RUBBER = 3
const BARREL = 0.5e-6

function syringe(): Expectation {
  const rows = [1, 2, 3, 4, 5].map((mass) => {
    const volume = measured(
      ([force, miss]) => closedGasVolume({ ...SYRINGE, force: force!, exponent: 1 }) + miss!,
      [mass * STANDARD_GRAVITY, 0],
      [RUBBER, BARREL],
    )
    return [
      { ...figure(mass, 'kg', 0), marked: true },
      { ...figure(volume, 'cm³', 1), marked: true },
    ]
  })
  return { columns: ['On the plunger', 'Air left'], rows }
}

/** The oil: 32 mm²/s at 40 °C and 5.36 at 100 °C, 50 cm³ of it through a metre of tube of 4 mm bore under half a metre of head; temperatures within a degree, the bore within 0.05 mm. */
const OIL = [
  { temperature: 313.15, viscosity: 32e-6 },
  { temperature: 373.15, viscosity: 5.36e-6 },
] as const
const TUBE = { volume: 50e-6, length: 1, head: 0.5, gravity: STANDARD_GRAVITY }
const BORE = 4e-3

const timeAt = (temperature: number, bore: number): number =>
  tubeDrainTime({ ...TUBE, bore, viscosity: viscosityAt(temperature, OIL) }).time

function oil(): Expectation {
  const rows = [5, 10, 20, 30, 40].map((celsius) => {
    const temperature = celsius + 273.15
    const time = measured(([at, bore]) => timeAt(at!, bore!), [temperature, BORE], [1, 0.05e-3])
    // both runs go through the same tube, so that its bore drops out
    const timesAsAt = (other: number) =>
      measured(
        ([cold, warm]) => timeAt(cold!, BORE) / timeAt(warm!, BORE),
        [temperature, other + 273.15],
        [1, 1],
      )
    const cup =
      flowCupTime({ hole: 4, viscosity: viscosityAt(temperature, OIL) }) /
      flowCupTime({ hole: 4, viscosity: OIL[0].viscosity })
    return [
      { ...figure(temperature, '°C', 0), marked: true },
      figure(time, 's', 0),
      figure(timesAsAt(20), '', 2),
      figure(timesAsAt(40), '', 2),
      figure(cup, '', 2),
    ]
  })
  return {
    columns: [
      'Oil at',
      'Time for 50 cm³',
      'Times as long as at 20 °C',
      'As at 40 °C',
      'A 4 mm flow cup, as at 40 °C',
    ],
    rows,
  }
}

/** What each rig should show. */
export const expectations = { press, syringe, oil } as const
export type Rig = keyof typeof expectations
