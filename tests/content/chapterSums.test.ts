import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { bikeOf } from '../../src/bikes/bikes.ts'
import type { Fitted } from '../../src/bikes/bikes.ts'
import { aboard } from '../../src/bikes/aboard.ts'
import type { Aboard } from '../../src/bikes/aboard.ts'
import { forkEnergy, forkForce, gasForce, liftDeceleration, solveStance, STANDARD_GRAVITY } from '../../src/core/index.ts'
import type { LoadCase, Stance } from '../../src/core/index.ts'
import { specs } from '../calculators/bikes.ts'

/* Sums that a chapter works out in its text, because no calculator has the result. Each is worked out here from the core and looked for in the text, to the
   digits printed there: a tolerance of half a unit of the last digit, by rounding. */

const roadster = specs['middleweight-roadster']!
const text = (id: string): string => readFileSync(`content/chapters/${id}.mdx`, 'utf8').replace(/<Value\b[^>]*?\/>/g, '·')

const SOLO: Aboard = { rider: 80 }
const TWO_UP: Aboard = { rider: 80, passenger: 70, luggage: 15 }
const settled = (load: Aboard, fitted: Fitted = {}, more: LoadCase = {}): Stance => solveStance(bikeOf(roadster, fitted), { payload: aboard(roadster, load), ...more })
const rest = settled(SOLO)

/** Where the peg of the example and the sump are, in the frame [m]. The heights are the example's, and hardly count: only the place along the bike does. */
const RIDER_PEG = { x: 0.62, z: 0.33 }
const PASSENGER_PEG = { x: 0.4, z: 0.42 }
const SUMP = { x: 0.85, z: 0.17 }

/** How far a part of the frame comes down from where it is with the rider on [mm]. */
const drop = (part: { x: number; z: number }, now: Stance): number => (rest.toGround(part).z - now.toGround(part).z) * 1e3

/** Lean at which the peg of the example touches once it has come down by so much [mm], rolling about the line between the contacts [°]. */
const touches = (down: number): number => (Math.atan((300 - down) / 360) * 180) / Math.PI

describe('a lower bike touches down sooner', () => {
  const tubes = settled(SOLO, { tubeRaise: 0.01 })
  const twoUp = settled(TWO_UP)
  const helped = settled(TWO_UP, { rearPreload: 0.011 + 0.012 })

  test('with the tubes 10 mm up', () => {
    const chapter = text('ride-height')
    expect(chapter).toContain(`sump, 0.85 m ahead of the rear axle, is ${drop(SUMP, tubes).toFixed(1)} mm lower`)
    expect(chapter).toContain(`the rider’s pegs, at 0.62 m, about ${drop(RIDER_PEG, tubes).toFixed(0)} mm`)
    expect(chapter).toContain(`then touches at ${(touches(0) - touches(drop(RIDER_PEG, tubes))).toFixed(1)}° less lean`)
  })

  test('with less preload or a smaller tyre by nearly as much', () => {
    for (const now of [settled(SOLO, { forkPreload: 0.005 }), settled(SOLO, { frontRadius: 0.29 })]) {
      // "nearly the same": within a tenth of a degree, less than anybody can ride to
      expect(Math.abs(touches(drop(RIDER_PEG, now)) - touches(drop(RIDER_PEG, tubes)))).toBeLessThan(0.1)
    }
    // "six times", to the nearest whole of the sizes as printed
    expect((touches(0) - touches(drop(RIDER_PEG, twoUp))) / 0.4).toBeCloseTo(6, 0)
  })

  test('with a passenger and luggage, on the solo setting and with 12 mm more at the shock', () => {
    const chapter = text('whole-bike')
    const [pegs, behind] = [drop(RIDER_PEG, twoUp), drop(PASSENGER_PEG, twoUp)]
    expect(chapter).toContain(`the rider’s pegs come down by ${pegs.toFixed(0)} mm, at 0.62 m ahead`)
    // "about": to the nearest five millimetres
    expect(chapter).toContain(`the passenger’s by about ${Math.round(behind / 5) * 5} mm, at 0.40 m`)
    expect(chapter).toContain(`touches at ${touches(pegs).toFixed(1)}° of lean, where it touched at ${touches(0).toFixed(1)}° before`)
    expect(chapter).toContain(`That costs ${(touches(0) - touches(pegs)).toFixed(1)}°, and with the 12 mm at the shock only ${(touches(0) - touches(drop(RIDER_PEG, helped))).toFixed(1)}°`)
  })
})

describe('a firm stop', () => {
  const deceleration = 0.6 * STANDARD_GRAVITY
  const braking = settled(SOLO, {}, { deceleration, frontBrakeShare: 1, gasState: { exponent: 1.4, from: rest.frontTravel } })
  const kilograms = (newtons: number): number => newtons / STANDARD_GRAVITY
  const chapter = text('braking-dive')

  test('what locked suspension would bring forward, and what the pitching adds', () => {
    const [height, wheelbase] = [rest.centreOfGravity.z * 1e3, rest.wheelbase * 1e3]
    const locked = (280 * 0.6 * height) / wheelbase
    expect(chapter).toContain(`280 × 0.6 × ${height.toFixed(1)} ÷ ${wheelbase.toFixed(1)} = ${locked.toFixed(1)} kg`)
    expect(chapter).toContain(`The other ${(kilograms(braking.frontLoad - rest.frontLoad) - locked).toFixed(1)} kg come`)
  })

  test('the worked example, step by step, adds up to the front load', () => {
    const [ahead, height, wheelbase] = [braking.centreOfGravity.x, braking.centreOfGravity.z, braking.wheelbase].map((length) => (length * 1e3).toFixed(1))
    const [weight, brake] = [(280 * Number(ahead)) / Number(wheelbase), (280 * 0.6 * Number(height)) / Number(wheelbase)]
    expect(chapter).toContain(`280 × ${ahead} ÷ ${wheelbase} = ${weight.toFixed(2)} kg`)
    expect(chapter).toContain(`280 × 0.6 × ${height} ÷ ${wheelbase} = ${brake.toFixed(2)} kg`)
    expect((weight + brake).toFixed(1)).toBe(kilograms(braking.frontLoad).toFixed(1))
  })

  test('the front brake’s share of the dive at 0.3 g, and of the push at 0.6 g', () => {
    const dive = (frontBrakeShare: number): number =>
      settled(SOLO, {}, { deceleration: deceleration / 2, frontBrakeShare, gasState: { exponent: 1.4, from: rest.frontTravel } }).frontTravel - rest.frontTravel
    expect(chapter).toContain(`the front brake made ${((1 - dive(0) / dive(1)) * 100).toFixed(0)} % of that dive`)
    const along = (load: number): number => (load - 28 * STANDARD_GRAVITY) * Math.cos(braking.rake)
    const share = (braking.forkForce - along(braking.frontLoad)) / (braking.forkForce - along(rest.frontLoad))
    // "a little over four tenths"
    expect(share).toBeGreaterThan(0.4)
    expect(share).toBeLessThan(0.45)
  })

  test('the rear wheel goes light sooner downhill', () => {
    // On a slope gravity's part along the road is added to the deceleration and the rest of it is left: a level stop at (a + g sin) with gravity g cos.
    const slope = Math.atan(0.1)
    const level = liftDeceleration(bikeOf(roadster), { payload: aboard(roadster, SOLO), frontBrakeShare: 1 })! / STANDARD_GRAVITY
    expect(chapter).toContain(`carries nothing from about ${(level * Math.cos(slope) - Math.sin(slope)).toFixed(2)} g`)
  })
})

describe('eight turns of preload', () => {
  const chapter = text('preload-versus-rate')
  /** The fork with more preload [m], or other springs or oil, and where it rests [m]. */
  const ends = (fitted: Fitted): { fork: ReturnType<typeof bikeOf>['fork']; stance: Stance } => ({ fork: bikeOf(roadster, fitted).fork, stance: settled(SOLO, fitted) })
  const came = ends({})
  const wound = ends({ forkPreload: 0.023 })

  test('what ten millimetres more take, before and after', () => {
    const more = ({ fork, stance }: typeof came): string => (forkForce(fork, stance.frontTravel + 0.01) - forkForce(fork, stance.frontTravel)).toFixed(0)
    expect(chapter).toContain(`pushes back ${more(came)} N harder`)
    expect(readFileSync('content/chapters/preload-versus-rate.mdx', 'utf8')).toContain(`<Near right is="${more(wound)} N"`)
  })

  test('the slopes of the worked example', () => {
    const rise = came.stance.frontTravel - wound.stance.frontTravel
    const air = ({ fork, stance }: typeof came): number => 2 * gasForce(fork.legs[0]!.gas!, fork.travel, stance.frontTravel)
    expect(chapter).toContain(`the air adds ${((air(came) - air(wound)) / rise / 1e3).toFixed(1)} N/mm`)
    expect(chapter).toContain(`the load gives back ${((came.stance.forkForce - wound.stance.forkForce) / rise / 1e3).toFixed(1)}.`)
  })

  test('what the air and the load give up', () => {
    const air = ({ fork, stance }: typeof came): number => 2 * gasForce(fork.legs[0]!.gas!, fork.travel, stance.frontTravel)
    expect(chapter).toContain(`pushes ${(air(came) - air(wound)).toFixed(0)} N less, while the load on the fork falls by ${(came.stance.forkForce - wound.stance.forkForce).toFixed(0)} N`)
  })

  // from rest to the stop, squeezed fast, over and above the load that is carried all the way
  test('the work to the stop, against eight turns, a step of spring and 10 mm of oil', () => {
    const work = ({ fork, stance }: typeof came): number =>
      forkEnergy(fork, stance.frontTravel, fork.travel, { exponent: 1.4, from: stance.frontTravel }) - stance.forkForce * (fork.travel - stance.frontTravel)
    const more = (fitted: Fitted): string => `${((work(ends(fitted)) / work(came) - 1) * 100).toFixed(0)} % more`
    const rows = [...readFileSync('content/chapters/preload-versus-rate.mdx', 'utf8').matchAll(/\| (\d+ % more) \|/g)].map((match) => match[1])
    expect(rows).toEqual([more({ forkPreload: 0.023 }), more({ forkRate: 9500, forkPreload: 0.01236 }), more({ airHeight: 0.12 })])
  })
})
