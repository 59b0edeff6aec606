import fc from 'fast-check'
import { expect, test } from 'vitest'
import { closedGasVolume } from '../../src/core/index.ts'
import { same } from './near.ts'

const gas = { volume: 50e-6, pressure: 101_325, area: 5e-4, exponent: 1 }

test('closedGasVolume(…): pressure times volume to the exponent stays, whatever the force', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -40, max: 500, noNaN: true }),
      fc.double({ min: 1, max: 1.4, noNaN: true }),
      (force, exponent) => {
        const volume = closedGasVolume({ ...gas, force, exponent })
        same((101_325 + force / 5e-4) * volume ** exponent, 101_325 * 50e-6 ** exponent, 1e-12)
      },
    ),
  )
})

test('closedGasVolume(…) by hand: a force of one atmosphere on the piston halves the air', () => {
  same(closedGasVolume({ ...gas, force: 101_325 * 5e-4 }), 25e-6)
})

test('closedGasVolume(…) refuses a pull that leaves nothing', () => {
  expect(() => closedGasVolume({ ...gas, force: -60 })).toThrow(/pull less/)
})
