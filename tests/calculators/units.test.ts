import { unit as quantity } from 'mathjs'
import { describe, expect, test } from 'vitest'
import { unitNamed } from '../../src/checks/units.ts'
import { convert, differenceFromSI, fromSI, toSI, units, type Unit } from '../../src/units/units.ts'

/* mathjs knows units by definitions of its own. Each of ours is written out in its words, with the SI unit that ours comes back in. */
const IN_MATHJS: Partial<Record<Unit, [its: string, si: string]>> = {
  mm: ['mm', 'm'],
  in: ['in', 'm'],
  m: ['m', 'm'],
  ft: ['ft', 'm'],
  'mm²': ['mm^2', 'm^2'],
  'cm³': ['cm^3', 'm^3'],
  'in³': ['in^3', 'm^3'],
  N: ['N', 'N'],
  kgf: ['kgf', 'N'],
  lbf: ['lbf', 'N'],
  'kg load': ['kgf', 'N'],
  'lb load': ['lbf', 'N'],
  'N/mm': ['N/mm', 'N/m'],
  'kgf/mm': ['kgf/mm', 'N/m'],
  'lbf/in': ['lbf/in', 'N/m'],
  kg: ['kg', 'kg'],
  lb: ['lbm', 'kg'],
  st: ['stone', 'kg'],
  '°': ['deg', 'rad'],
  bar: ['bar', 'Pa'],
  kPa: ['kPa', 'Pa'],
  // its own psi is rounded
  psi: ['lbf/in^2', 'Pa'],
  MPa: ['MPa', 'Pa'],
  GPa: ['GPa', 'Pa'],
  '°C': ['degC', 'K'],
  '°F': ['degF', 'K'],
  s: ['s', 's'],
  'm/s': ['m/s', 'm/s'],
  'km/h': ['km/hour', 'm/s'],
  mph: ['mi/hour', 'm/s'],
  'mm²/s': ['mm^2/s', 'm^2/s'],
  'N·s/m': ['N s/m', 'N s/m'],
  'N·m': ['N m', 'N m'],
  'lbf·ft': ['lbf ft', 'N m'],
  J: ['J', 'J'],
}
/** What mathjs has no word for. */
const WORKED: Partial<Record<Unit, number>> = {
  g: 9.80665,
  Hz: 2 * Math.PI,
  '1/s': 1,
  '%': 0.01,
  '1/m': 1,
  '1/mm': 1000,
  '': 1,
  turns: 1,
  clicks: 1,
  coils: 1,
}

const all = Object.keys(units) as Unit[]
const known = Object.entries(IN_MATHJS) as [Unit, [string, string]][]
const inSI = (value: number, [its, si]: [string, string]): number =>
  quantity(value, its).toNumber(si)

/** mathjs multiplies and divides on another way than we do: a few roundings of the value. */
const ROUNDING = 1e-12
const near = (actual: number, wanted: number, label: string): void =>
  expect(Math.abs(actual - wanted), `${label}: ${actual} against ${wanted}`).toBeLessThanOrEqual(
    ROUNDING * Math.max(1e-6, Math.abs(wanted)),
  )

describe('units against mathjs', () => {
  test.each(known)(
    'toSI(…) of %s agrees with mathjs, and fromSI(…) turns it back',
    (name, words) => {
      for (const value of [1, -12.5, 0.001, 98765.4321]) {
        if (words[1] === 'K' && value < -200) continue
        near(toSI(value, name), inSI(value, words), name)
        // twelve digits of the larger of value and zero point survive the way there and back
        expect(Math.abs(fromSI(toSI(value, name), name) - value)).toBeLessThanOrEqual(
          1e-12 * Math.max(Math.abs(value), Math.abs(units[name].zero ?? 0) / units[name].factor),
        )
      }
    },
  )

  test('units holds no unit that is compared neither with mathjs nor with its definition', () => {
    expect(
      all.filter((name) => IN_MATHJS[name] === undefined && WORKED[name] === undefined),
    ).toEqual([])
    for (const [name, factor] of Object.entries(WORKED))
      near(units[name as Unit].factor, factor, name)
  })

  test('convert(…) between any two units of one quantity agrees with mathjs', () => {
    for (const [from, [fromWords]] of known) {
      for (const [to, [toWords]] of known) {
        if (units[from].quantity !== units[to].quantity) continue
        near(convert(40, from, to), quantity(40, fromWords).toNumber(toWords), `${from} in ${to}`)
      }
    }
  })

  test('convert(…) refuses units of different quantities', () => {
    expect(() => convert(1, 'mm', 'kg')).toThrow('mm and kg measure different things')
  })

  test('differenceFromSI(…) leaves the zero point of a temperature out: 10 K of warming is 18 °F', () => {
    near(differenceFromSI(10, '°F'), 18, '°F')
    near(differenceFromSI(10, '°C'), 10, '°C')
  })
})

describe('units of published examples against mathjs', () => {
  test.each([
    ['kpsi', 'lbf/in^2', 'Pa', 1000],
    ['Mpsi', 'lbf/in^2', 'Pa', 1e6],
    ['in²', 'in^2', 'm^2', 1],
    ['ft/s²', 'ft/s^2', 'm/s^2', 1],
    ['in/s²', 'in/s^2', 'm/s^2', 1],
    ['lbf/ft', 'lbf/ft', 'N/m', 1],
    ['kgf/cm²', 'kgf/cm^2', 'Pa', 1],
    ['kgf·m', 'kgf m', 'N m', 1],
    ['lbf·in', 'lbf in', 'N m', 1],
    ['lbf·s/ft', 'lbf s/ft', 'N s/m', 1],
    ['lbf·s/in', 'lbf s/in', 'N s/m', 1],
    ['L/min', 'liter/minute', 'm^3/s', 1],
    ['kJ/(kg·K)', 'kJ/(kg K)', 'J/(kg K)', 1],
    ['kN', 'kN', 'N', 1],
    ['nm', 'nm', 'm', 1],
  ])('unitNamed(“%s”) agrees with mathjs', (name, its, si, scale) => {
    near(unitNamed(name).factor, scale * quantity(1, its).toNumber(si), name)
  })

  test('unitNamed(…) has a gallon of 231 in³ and a millimetre of mercury of 133.322 Pa', () => {
    near(unitNamed('gpm').factor, (231 * 0.0254 ** 3) / 60, 'gpm')
    // mathjs rounds it to 133.322
    expect(Math.abs(unitNamed('mmHg').factor - quantity(1, 'mmHg').toNumber('Pa'))).toBeLessThan(
      5e-4,
    )
  })

  test('unitNamed(…) refuses a symbol that stands in no table', () => {
    expect(() => unitNamed('furlong')).toThrow('there is no unit “furlong”')
  })
})
