import type { Unit } from '../units/units.ts'
import { toSI } from '../units/units.ts'
import type { BikeSheet, Written } from './sheet.ts'

/** The unit of each number in `T`; a pair of numbers has one unit, and texts have none. */
type UnitsOf<T> = {
  [K in keyof T as T[K] extends string ? never : K]-?: NonNullable<T[K]> extends
    number | readonly number[]
    ? Unit
    : UnitsOf<NonNullable<T[K]>>
}

const point = { x: 'mm', z: 'mm' } as const
const place = { ...point, mass: 'kg' } as const
const sagWindow = { static: '%', rider: '%' } as const

/** What each number of a bike's sheet is written in. A number of the schema that is missing here fails the type check. */
export const SHEET_UNITS = {
  quotedAt: { frontTravel: 'mm', rearTravel: 'mm' },
  wheelbase: 'mm',
  rake: '°',
  forkOffset: 'mm',
  frontRadius: 'mm',
  rearRadius: 'mm',
  pivot: point,
  mass: 'kg',
  frontShare: '%',
  centreOfGravityHeight: 'mm',
  frontUnsprungMass: 'kg',
  rearUnsprungMass: 'kg',
  fork: {
    travel: 'mm',
    springRate: 'N/mm',
    preload: 'mm',
    tubeDiameter: 'mm',
    boreDiameter: 'mm',
    airHeight: 'mm',
    stackVolume: 'cm³',
    friction: 'N',
    topOut: { rate: 'N/mm', length: 'mm' },
    exposedTube: 'mm',
  },
  rear: {
    shocks: '',
    travel: 'mm',
    springRate: 'N/mm',
    preload: 'mm',
    motionRatio: { initial: '', slope: '1/mm' },
    gasForce: 'N',
    friction: 'N',
  },
  rider: place,
  passenger: place,
  luggage: place,
  frontSagWindow: sagWindow,
  rearSagWindow: sagWindow,
} as const satisfies UnitsOf<Written>

/** A bike in SI: the sheet's own names, lengths in m, rates in N/m, angles in rad, shares of 1. */
export interface BikeSpec extends Written {
  id: string
  units: 'SI'
}

type Units = Unit | { readonly [key: string]: Units }

/** Numbers by their unit, all under them likewise; what has no unit stays as it is. */
function converted(value: unknown, units: Units | undefined): unknown {
  if (units === undefined || value === undefined) return value
  if (Array.isArray(value)) return value.map((each) => converted(each, units))
  return typeof units === 'string'
    ? toSI(Number(value), units)
    : Object.fromEntries(
        Object.entries(value as object).map(([key, each]) => [key, converted(each, units[key])]),
      )
}

/** A sheet turned to SI: the one place where a bike changes units. */
export const inSI = (sheet: BikeSheet): BikeSpec => ({
  ...(converted(sheet, SHEET_UNITS) as Written & { id: string }),
  units: 'SI',
})

/** The unit of one place on a sheet, as "fork.travel"; undefined where it holds no number. */
export function sheetUnit(path: string): Unit | undefined {
  let units: Units | undefined = SHEET_UNITS
  for (const key of path.split('.')) units = typeof units === 'object' ? units[key] : undefined
  return typeof units === 'string' ? units : undefined
}
