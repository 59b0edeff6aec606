import { expect, test } from 'vitest'
import { standardPressure } from '../../src/core/index.ts'
import { expectRefusal } from './tolerance.ts'

// ISO 2533, the printed pressures [Pa], from memory; the last printed digit is a tenth of a pascal or better
test.each([
  [-500, 107_478],
  [0, 101_325],
  [1000, 89_874.6],
  [2000, 79_495.2],
  [5000, 54_019.9],
  [11_000, 22_632.1],
])('standardPressure at %d m is %d Pa (ISO 2533, from memory)', (altitude, pressure) => {
  // the standard's own constants give the table to a few pascals in a hundred thousand
  expect(Math.abs(standardPressure(altitude) - pressure)).toBeLessThanOrEqual(3)
})

test('standardPressure refuses heights outside −500 to 11,000 m', () => {
  expectRefusal(() => standardPressure(-501), 'altitude')
  expectRefusal(() => standardPressure(11_001), 'altitude')
  expectRefusal(() => standardPressure(Number.NaN), 'altitude')
})
