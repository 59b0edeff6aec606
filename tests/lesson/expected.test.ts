import { expect, test } from 'vitest'
import { expectations } from '../../src/lesson/expected.ts'
import type { Figure, Rig } from '../../src/lesson/expected.ts'
import { near } from '../core/near.ts'

const valueOf = ({ si }: Figure): number => (typeof si === 'number' ? si : si.value)
const columnOf = (rig: Rig, column: number): Figure[] =>
  expectations[rig]().rows.map((row) => row[column]!)

test('the press reads what Hooke’s law gives for 9 N/mm, in newtons and in kilograms', () => {
  const forces = columnOf('press', 1)
  const kilograms = columnOf('press', 2)
  for (const [at, squeeze] of [10, 20, 30, 40, 50, 60, 70].entries()) {
    near(valueOf(forces[at]!), 9 * squeeze, 1e-9)
    near(valueOf(kilograms[at]!), 9 * squeeze, 1e-9)
  }
  // 64 kg at 70 mm is why a kitchen scale is not enough
  near(valueOf(kilograms.at(-1)!) / 9.80665, 64.2, 0.05)
})

test('the syringe reads what Boyle’s law gives for a piston of 27 mm', () => {
  const area = (Math.PI * 13.5 ** 2) / 1e6
  for (const [at, volume] of columnOf('syringe', 1).entries()) {
    const pressure = 101_325 + ((at + 1) * 9.80665) / area
    near(valueOf(volume), (50e-6 * 101_325) / pressure, 1e-12)
  }
})

test('the oil takes what Poiseuille’s law gives, so that its times go as its viscosity', () => {
  // ASTM D341 through 32 mm²/s at 40 °C and 5.36 at 100 °C, by hand
  const line = (celsius: number, viscosity: number): [number, number] => [
    Math.log10(celsius + 273.15),
    Math.log10(Math.log10(viscosity + 0.7)),
  ]
  const [[x1, y1], [x2, y2]] = [line(40, 32), line(100, 5.36)]
  const slope = (y2 - y1) / (x2 - x1)
  const viscosity = (celsius: number): number =>
    10 ** (10 ** (y1 + slope * (Math.log10(celsius + 273.15) - x1))) - 0.7
  for (const [at, ratio] of columnOf('oil', 3).entries()) {
    const celsius = [5, 10, 20, 30, 40][at]!
    // what the oil's own speed takes from the head and the small terms of the standard’s equation are below two parts in a hundred
    near(valueOf(ratio), viscosity(celsius) / 32, 0.02 * (viscosity(celsius) / 32))
  }
})

test('each expected reading lies in its band, and every band has a width', () => {
  for (const rig of Object.keys(expectations) as Rig[])
    for (const { si } of expectations[rig]().rows.flat())
      if (typeof si !== 'number') {
        expect(si.low).toBeLessThan(si.value)
        expect(si.value).toBeLessThan(si.high)
      }
})
