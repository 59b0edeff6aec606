import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { viscosityFromIndex, viscosityIndex } from '../../src/core/viscosityIndex.ts'
import { AT_100, INDEX_0, INDEX_100 } from '../../src/core/viscosityIndexTable.ts'
import { expectRefusal, expectWithin } from './tolerance.ts'

const some = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const index = (at40: number, at100: number): number =>
  viscosityIndex({ at40: at40 * 1e-6, at100: at100 * 1e-6 })

describe('viscosityIndex', () => {
  // ASTM D2270 / ISO 2909 worked examples, the last a value for the formulas above 70 mm²/s; digits as in github CalebBell/chemicals, tests/test_viscosity.py (commit 82faef9)
  test.each([
    [73.3, 8.86, 92.4296472453428],
    [22.83, 5.05, 156.42348293257797],
    [53.47, 7.8, 111.30701701381422],
    [73.5, 8.86, 92.03329369797858],
    [1000, 100, 192.9975428057893],
  ])(
    'viscosityIndex of %d mm²/s at 40 °C and %d at 100 °C is %d (ASTM D2270)',
    (at40, at100, wanted) => {
      expectWithin(index(at40, at100), wanted, 1e-9) // as given
    },
  )

  test('viscosityIndex is 0 on the table’s L and 100 on its H', () => {
    AT_100.forEach((at100, i) => {
      expectWithin(index(INDEX_0[i] ?? NaN, at100), 0, 1e-8) // units change by 1e6 and back
      expectWithin(index(INDEX_100[i] ?? NaN, at100), 100, 1e-8)
    })
  })

  test('viscosityIndex is 0 on L and 100 on H above 70 mm²/s too: 9604 and 2772 at 100 (ASTM D2270, the formulas worked by hand)', () => {
    expectWithin(index(9604, 100), 0, 1e-8)
    expectWithin(index(2772, 100), 100, 1e-8)
  })

  test('viscosityIndex changes little where procedure A hands over to B, and where the table ends', () => {
    expectWithin(index(68.08, 8.86), index(68.081, 8.86), 0.02)
    // the formulas above 70 mm²/s miss the table's last entry by 0.02 %
    expectWithin(index(1000, 70), index(1000, 70.001), 0.1)
  })

  test('viscosityIndex falls as the oil gets thicker at 40 °C for the same viscosity at 100 °C', () => {
    fc.assert(
      fc.property(
        some(2, 90),
        some(1.5, 20),
        some(1.001, 2),
        (at100, times, more) => index(at100 * times * more, at100) < index(at100 * times, at100),
      ),
    )
  })

  test('viscosityIndex rises with the viscosity at 100 °C for the same viscosity at 40 °C', () => {
    fc.assert(
      fc.property(
        some(2, 20),
        some(1.01, 1.5),
        (at100, more) => index(at100 * 8, at100 * more) > index(at100 * 8, at100),
      ),
    )
  })

  test('viscosityIndex holds at exactly 2 mm²/s and refuses less, an oil not thinner at 100 °C, and what is no number', () => {
    expectWithin(index(7.194, 2), 50, 1e-8) // midway between L = 7.994 and H = 6.394
    expectRefusal(() => index(8, 1.99), 'at100')
    expectRefusal(() => index(5, 5), 'at40')
    expectRefusal(() => index(0, 5), 'at40')
    expectRefusal(() => index(NaN, 5), 'at40')
    expectRefusal(() => viscosityIndex({ at40: 32, at100: NaN }), 'at100')
    expectRefusal(
      () => viscosityIndex(undefined as unknown as { at40: number; at100: number }),
      'oil',
    )
  })
})

describe('viscosityFromIndex', () => {
  test('viscosityFromIndex turns viscosityIndex round', () => {
    fc.assert(
      fc.property(some(2.1, 60), some(2, 15), (at100, times) => {
        const at40 = at100 * times * 1e-6
        const found = viscosityFromIndex({ at40, index: index(at100 * times, at100) })
        expectWithin(found, at100 * 1e-6, at100 * 1e-15) // viscosities are taken to twelve digits
      }),
    )
  })

  test('viscosityFromIndex reaches the thinnest oil of the standard, 2 mm²/s at 100 °C, and one that hardly thins at all', () => {
    expect(viscosityFromIndex({ at40: 7.194e-6, index: index(7.194, 2) })).toBe(2e-6)
    const same = 7.194e-6 * (1 - 1e-9)
    expectWithin(
      viscosityFromIndex({
        at40: 7.194e-6,
        index: viscosityIndex({ at40: 7.194e-6, at100: same }),
      }),
      same,
      1e-20,
    )
  })

  test('viscosityFromIndex refuses an index that no such oil has, and what is no number', () => {
    expectRefusal(() => viscosityFromIndex({ at40: 1.5e-6, index: 100 }), 'index')
    expectRefusal(
      () => viscosityFromIndex(undefined as unknown as { at40: number; index: number }),
      'oil',
    )
    expectRefusal(() => viscosityFromIndex({ at40: 32e-6, index: 5000 }), 'index')
    expectRefusal(() => viscosityFromIndex({ at40: 32e-6, index: -5000 }), 'index')
    expectRefusal(() => viscosityFromIndex({ at40: 32e-6, index: NaN }), 'index')
    expectRefusal(() => viscosityFromIndex({ at40: 0, index: 100 }), 'at40')
  })
})

describe('the table of ASTM D2270', () => {
  test('the table rises throughout, with H below L, and has an entry for each viscosity', () => {
    expect([AT_100.length, INDEX_0.length, INDEX_100.length]).toEqual([311, 311, 311])
    for (const column of [AT_100, INDEX_0, INDEX_100]) {
      column.forEach((value, i) =>
        expect(value).toBeGreaterThan(i === 0 ? 0 : (column[i - 1] ?? NaN)),
      )
    }
    // a slip of one digit anywhere would show: sums of the columns at the source
    const sum = (column: readonly number[]) => column.reduce((total, value) => total + value, 0)
    expectWithin(sum(INDEX_0), 293891.363, 1e-7)
    expectWithin(sum(INDEX_100), 110746.508, 1e-7)
    INDEX_100.forEach((high, i) => expect(high).toBeLessThan(INDEX_0[i] ?? NaN))
  })
})
