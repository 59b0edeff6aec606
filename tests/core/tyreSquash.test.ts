import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  type Bike,
  forkEnergy,
  liftDeceleration,
  pose,
  solveStance,
  springEnergy,
  STANDARD_GRAVITY,
} from '../../src/core/index.ts'
import { plainBike, RIDER } from './bikes.ts'
import { near, same } from './near.ts'
import { expectRefusal } from './tolerance.ts'
import { between } from './draws.ts'

const bike = plainBike()
const ridden = { payload: [RIDER] }
const stiffness = fc.double({ min: 60e3, max: 400e3, noNaN: true })

/** The bike on wheels of other radii, its datum pose as it was. */
const onRadii = (of: Bike, frontRadius: number, rearRadius: number): Bike => ({
  ...of,
  geometry: {
    ...of.geometry,
    frontRadius,
    rearRadius,
    datum: {
      frontRadius: of.geometry.frontRadius,
      rearRadius: of.geometry.rearRadius,
      ...of.geometry.datum,
    },
  },
})

test('solveStance(…, { tyres }) squashes each tyre by load ÷ stiffness, and lowers its axle by that', () => {
  const stance = solveStance(bike, ridden, { tyres: { front: { stiffness: 180e3 } } })
  same(stance.tyreSquash!.front, stance.frontLoad / 180e3, 1e-9)
  same(stance.frontAxle.z, bike.geometry.frontRadius - stance.frontLoad / 180e3, 1e-9)
  expect(stance.tyreSquash!.rear).toBe(0)
})

test('solveStance(…, { tyres }) lowers the nose by the front squash over the wheelbase, and takes rake off with the rear’s', () => {
  const before = solveStance(bike, ridden)
  const front = solveStance(bike, ridden, { tyres: { front: { stiffness: 180e3 } } })
  const rear = solveStance(bike, ridden, { tyres: { rear: { stiffness: 180e3 } } })
  // the lower nose takes load and sinks the fork a little further: a part in seventeen here
  const share = 0.08
  near(
    front.pitch - before.pitch,
    -front.tyreSquash!.front / before.wheelbase,
    share * (front.tyreSquash!.front / before.wheelbase),
  )
  near(
    rear.rake - before.rake,
    rear.tyreSquash!.rear / before.wheelbase,
    share * (rear.tyreSquash!.rear / before.wheelbase),
  )
})

test('solveStance(…, { tyres }) is where the energy of springs, tyres and weight has no slope, whatever the tyres', () => {
  // A law that shares no equation with the balance. Central differences over 0.1 mm leave below 1e-3 N.
  const { travel: _, motionRatio, spring, preload } = bike.rear
  const ratio = (motionRatio as { initial: number }).initial
  fc.assert(
    fc.property(stiffness, stiffness, (kFront, kRear) => {
      const tyres = { front: { stiffness: kFront }, rear: { stiffness: kRear } }
      const stance = solveStance(bike, ridden, { tyres })
      expect([stance.frontStop, stance.rearStop]).toEqual(['none', 'none'])
      const energy = ([front = 0, rear = 0, squashFront = 0, squashRear = 0]: number[]): number => {
        const { frontRadius, rearRadius } = bike.geometry
        const { geometry } = onRadii(bike, frontRadius - squashFront, rearRadius - squashRear)
        const at = pose(geometry, front, rear)
        const heights =
          [bike.sprung, RIDER].reduce((sum, part) => sum + part.mass * at.toGround(part).z, 0) +
          bike.frontUnsprungMass * at.frontAxle.z +
          bike.rearUnsprungMass * at.rearAxle.z
        return (
          STANDARD_GRAVITY * heights +
          forkEnergy(bike.fork, 0, front) +
          springEnergy(spring, preload + ratio * rear) +
          (kFront * squashFront ** 2 + kRear * squashRear ** 2) / 2
        )
      }
      const { front, rear } = stance.tyreSquash!
      const there = [stance.frontTravel, stance.rearTravel, front, rear]
      for (const place of there.keys()) {
        const moved = (by: number): number =>
          energy(there.map((value, other) => (other === place ? value + by : value)))
        near((moved(1e-4) - moved(-1e-4)) / 2e-4, 0, 0.02)
      }
    }),
    { numRuns: 40 },
  )
})

test('solveStance(…, { tyres }) is the stance of the same bike on wheels that are so much smaller, brakes and slope included', () => {
  fc.assert(
    fc.property(stiffness, stiffness, between(0, 7), (f, r, a) => {
      const loadCase = { ...ridden, deceleration: a, slope: 0.05, frontBrakeShare: 0.8 }
      const { tyreSquash, ...stance } = solveStance(
        { ...bike, wheelInertia: { front: 0.4, rear: 0.6 } },
        loadCase,
        { tyres: { front: { stiffness: f, load: 500 }, rear: { stiffness: r, load: 900 } } },
      )
      const { frontRadius, rearRadius } = bike.geometry
      const smaller = solveStance(
        {
          ...onRadii(bike, frontRadius - tyreSquash!.front, rearRadius - tyreSquash!.rear),
          wheelInertia: { front: 0.4, rear: 0.6 },
        },
        loadCase,
      )
      near(tyreSquash!.front, (Math.max(0, stance.frontLoad) - 500) / f, 1e-9)
      near(tyreSquash!.rear, (Math.max(0, stance.rearLoad) - 900) / r, 1e-9)
      near(stance.frontTravel, smaller.frontTravel, 1e-9)
      near(stance.trail, smaller.trail, 1e-9)
      near(stance.rearLoad, smaller.rearLoad, 1e-4)
    }),
    { numRuns: 60 },
  )
})

test('solveStance(…, { tyres }) tends to the stance without as the tyres stiffen, and is it at the load the radius was read under', () => {
  const rigid = solveStance(bike, ridden)
  const stiff = solveStance(bike, ridden, {
    tyres: { front: { stiffness: 1e12 }, rear: { stiffness: 1e12 } },
  })
  near(stiff.trail, rigid.trail, 1e-8)
  const read = solveStance(bike, ridden, {
    tyres: {
      front: { stiffness: 150e3, load: rigid.frontLoad },
      rear: { stiffness: 150e3, load: rigid.rearLoad },
    },
  })
  near(read.frontTravel, rigid.frontTravel, 1e-10)
  near(read.trail, rigid.trail, 1e-10)
})

test('solveStance(…, { tyres }) gives a lifted wheel its free radius: a tyre does not pull', () => {
  const lifted = solveStance(
    bike,
    { ...ridden, deceleration: 12 },
    { tyres: { rear: { stiffness: 150e3, load: 900 } } },
  )
  expect(lifted.rearWheelLifts).toBe(true)
  near(lifted.rearAxle.z, bike.geometry.rearRadius + 900 / 150e3, 1e-12)
})

test('solveStance(…) without tyres says nothing of them', () => {
  expect(solveStance(bike, ridden)).not.toHaveProperty('tyreSquash')
})

test('liftDeceleration(…, { tyres }) is where the rear load on those tyres is 0', () => {
  const tyres = { front: { stiffness: 150e3 }, rear: { stiffness: 170e3 } }
  const deceleration = liftDeceleration(bike, ridden, { tyres })!
  near(solveStance(bike, { ...ridden, deceleration }, { tyres }).rearLoad, 0, 1e-6)
  expect(deceleration).toBeGreaterThan(liftDeceleration(bike, ridden)!)
})

test('solveStance(…, { tyres }) refuses a stiffness that is none, and one that lets the axle down to the ground', () => {
  const on = (tyre: object) => () =>
    solveStance(bike, ridden, { tyres: { front: tyre as { stiffness: number } } })
  expectRefusal(on({ stiffness: 0 }), 'tyres.front.stiffness')
  expectRefusal(on({ stiffness: 2000 }), 'tyres.front.stiffness')
  expectRefusal(on({ stiffness: 150e3, load: -1 }), 'tyres.front.load')
  expectRefusal(() => solveStance(bike, ridden, { tyres: 3 as never }), 'tyres')
})
