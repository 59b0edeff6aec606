import fc from 'fast-check'
import { expect, test } from 'vitest'
import { bikeFromScales, solveStance } from '../../src/core/index.ts'
import { plainBike, randomCase, stream } from './bikes.ts'
import { near, same } from './near.ts'

const { sprung: _, ...parts } = plainBike()
const reading = {
  frontLoad: 950,
  rearLoad: 1000,
  frontTravel: 0.02,
  rearTravel: 0.015,
  centreOfGravityHeight: 0.56,
}

test('bikeFromScales(…) takes a solved stance back to the bike that made it', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 2 ** 31 }), (seed) => {
      const { bike } = randomCase(stream(seed))
      let stance
      try {
        stance = solveStance(bike)
      } catch {
        return
      }
      if (stance.frontLoad < 0 || stance.rearLoad < 0) return
      const { frontLoad, rearLoad, frontTravel, rearTravel, centreOfGravity } = stance
      const found = bikeFromScales({
        ...bike,
        reading: {
          frontLoad,
          rearLoad,
          frontTravel,
          rearTravel,
          centreOfGravityHeight: centreOfGravity.z,
        },
      })
      same(found.sprung.mass, bike.sprung.mass, 1e-9)
      near(found.sprung.x, bike.sprung.x, 1e-9)
      near(found.sprung.z, bike.sprung.z, 1e-9)
    }),
  )
})

test('bikeFromScales(…) hands geometry, ends and unsprung masses on as they are, and weighs what the scales said', () => {
  const bike = bikeFromScales({ ...parts, reading })
  expect(bike).toMatchObject(parts)
  const stance = solveStance(bike)
  same(stance.frontLoad + stance.rearLoad, 1950)
})

test('bikeFromScales(…) refuses readings that make no sense', () => {
  const bad: [object, string][] = [
    [{ frontLoad: -1 }, 'reading.frontLoad'],
    [{ rearLoad: NaN }, 'reading.rearLoad'],
    [{ frontTravel: 0.2 }, 'reading.frontTravel'],
    [{ rearTravel: -0.01 }, 'reading.rearTravel'],
    [{ centreOfGravityHeight: NaN }, 'reading.centreOfGravityHeight'],
    [{ frontLoad: 100, rearLoad: 100 }, 'reading'],
  ]
  for (const [change, parameter] of bad) {
    expect(
      () => bikeFromScales({ ...parts, reading: { ...reading, ...change } }),
      parameter,
    ).toThrow(expect.objectContaining({ parameter }))
  }
  const weightless = {
    ...parts,
    frontUnsprungMass: 0,
    rearUnsprungMass: 0,
    reading: { ...reading, frontLoad: 0, rearLoad: 0 },
  }
  expect(() => bikeFromScales(weightless)).toThrow(
    expect.objectContaining({ parameter: 'reading' }),
  )
  expect(() => bikeFromScales({ ...parts, reading: undefined as never })).toThrow(
    expect.objectContaining({ parameter: 'reading' }),
  )
})
