import { codesOf } from '../../src/machine/cells.ts'
import type { Cell } from '../../src/machine/cells.ts'
import { loadCalculator } from '../../src/calculators/index.ts'
import { existsSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import StanceFigure from '../../src/calculators/stance/Figure.tsx'
import { bikeOf, forkOf, geometryOf, payloadOf, rearOf } from '../../src/bikes/bikes.ts'
import type { Fitted } from '../../src/bikes/bikes.ts'
import type { Given } from '../../src/machine/given.ts'
import type { Interval } from '../../src/units/interval.ts'
import { evaluate } from '../../src/machine/evaluate.ts'
import {
  bikeFromScales,
  forkForce,
  liftDeceleration,
  solveStance,
  STANDARD_GRAVITY,
} from '../../src/core/index.ts'
import type { LoadCase } from '../../src/core/index.ts'
import { dots, valueAt } from './drawn.ts'
import {
  asDefinition,
  bikes,
  drawn,
  expectNear,
  expectSound,
  remarksOf,
  result,
  shown,
} from './evaluated.ts'
import { specs } from './bikes.ts'

const stance = loadCalculator('stance')

const ids = Object.keys(bikes)
const MM = 1e-3
const SAME = { forkPreloadChange: 0 }
const keys = [
  'frontTravel',
  'rearTravel',
  'frontLoad',
  'rearLoad',
  'frontShare',
  'trail',
  'rake',
  'wheelbase',
  'pitch',
  'normalTrail',
  'forkForce',
  'rearForce',
] as const

function expectStance(
  id: string,
  given: Record<string, number | string>,
  fitted: Fitted,
  loadCase: (from: number) => LoadCase,
): void {
  const spec = specs[id]!
  const bike = bikeOf(spec, fitted)
  const from = solveStance(bike, { payload: loadCase(0).payload ?? [] }).frontTravel
  const wanted = solveStance(bike, loadCase(from))
  const { output } = shown(stance, { bike: id, ...SAME, ...given }).now
  for (const key of keys) expect(output[key], `${id}: ${key}`).toBe(wanted[key])
}

const rider = (id: string) => payloadOf(specs[id]!.rider, 80)

describe('stance', () => {
  test.each(ids)('stance of %s at rest is solveStance, digit for digit', (id) =>
    expectStance(id, {}, {}, () => ({ payload: [rider(id)] })),
  )

  test.each(ids)(
    'stance of %s on the brakes is solveStance with the gas fast from rest, digit for digit',
    (id) => {
      const given = { situation: 'braking', deceleration: 0.5, frontBrakeShare: 80 }
      expectStance(id, given, {}, (from) => ({
        payload: [rider(id)],
        deceleration: 0.5 * STANDARD_GRAVITY,
        frontBrakeShare: 80 * 0.01,
        gasState: { exponent: 1.4, from },
      }))
    },
  )

  test.each(ids)('stance of %s leaning and two-up is solveStance, digit for digit', (id) => {
    expectStance(id, { situation: 'leaning', lean: 40 }, {}, () => ({
      payload: [rider(id)],
      lean: 40 * (Math.PI / 180),
    }))
    const spec = specs[id]!
    expectStance(id, { situation: 'twoUp' }, {}, () => ({
      payload: [rider(id), payloadOf(spec.passenger), payloadOf(spec.luggage)],
    }))
  })

  test.each(ids)(
    'stance of %s with a change at either end is solveStance of what is fitted, digit for digit',
    (id) => {
      const { fork, rear, frontRadius, rearRadius } = specs[id]!
      const payload = () => ({ payload: [rider(id)] })
      expectStance(id, { forkPreloadChange: 5 }, { forkPreload: fork.preload + 5 * MM }, payload)
      expectStance(id, { tubeRaise: 8 }, { tubeRaise: 8 * MM }, payload)
      expectStance(id, { forkRateChange: 1 }, { forkRate: fork.springRate + 1e3 }, payload)
      expectStance(id, { oilHeightChange: -20 }, { airHeight: fork.airHeight - 20 * MM }, payload)
      expectStance(
        id,
        { frontRadiusChange: 4, rearRadiusChange: -4 },
        { frontRadius: frontRadius + 4 * MM, rearRadius: rearRadius - 4 * MM },
        payload,
      )
      expectStance(
        id,
        { rearPreloadChange: 4, rearRateChange: 5 },
        { rearPreload: rear.preload + 4 * MM, rearRate: rear.springRate + 5e3 },
        payload,
      )
    },
  )

  test('stance by a longer shock raises the back by its length over the motion ratio', () => {
    // the roadster's ratio is constant
    expectStance(
      'middleweight-roadster',
      { shockLengthChange: 4 },
      { rearRaise: (4 * MM) / 0.4348 },
      () => ({ payload: [rider('middleweight-roadster')] }),
    )
  })

  test('stance from two scales is bikeFromScales, digit for digit', () => {
    const spec = specs['middleweight-roadster']!
    const [fork, rear] = [forkOf(spec), rearOf(spec)]
    const reading = {
      frontLoad: 104 * STANDARD_GRAVITY,
      rearLoad: 99 * STANDARD_GRAVITY,
      frontTravel: 22 * MM,
      rearTravel: 10 * MM,
      centreOfGravityHeight: 520 * MM,
    }
    const bike = bikeFromScales({
      geometry: geometryOf(spec),
      frontUnsprungMass: spec.frontUnsprungMass,
      rearUnsprungMass: spec.rearUnsprungMass,
      fork,
      rear,
      reading,
    })
    const wanted = solveStance(bike, { payload: [rider('middleweight-roadster')] })
    const { output } = shown(stance, {
      ...SAME,
      from: 'scales',
      scaleFront: 104,
      scaleRear: 99,
      scaleHeight: 520,
    }).now
    for (const key of keys) expect(output[key], key).toBe(wanted[key])
  })

  test('stance with no figures of one’s own is the bike’s sheet, and takes those that are given', () => {
    expect(shown(stance, { from: 'own' }).now.output).toEqual(shown(stance).now.output)
    expect(
      result(stance, { from: 'own', wheelbase: 1500 }, 'wheelbase') -
        result(stance, {}, 'wheelbase'),
    ).toBeGreaterThan(45)
    // not asked for while the sheet stands
    expect(shown(stance, { from: 'bike', wheelbase: 1500 }).now.output).toEqual(
      shown(stance).now.output,
    )
  })

  test('stance before is the same bike in the same situation, nothing changed', () => {
    const { before } = shown(stance, { situation: 'braking', tubeRaise: 10, rearPreloadChange: 5 })
    expect(before?.output).toEqual(shown(stance, { ...SAME, situation: 'braking' }).now.output)
  })

  test('stance’s friction band runs from sinking to rising', () => {
    const bike = bikeOf(specs['middleweight-roadster']!)
    const travels = [-1, 1].map(
      (settle) =>
        solveStance(bike, { payload: [rider('middleweight-roadster')] }, { settle }).frontTravel,
    )
    expect(shown(stance, SAME).now.output.frontBand).toMatchObject({
      low: travels[0],
      high: travels[1],
    })
    expect(remarksOf(stance, SAME)).toMatch(/Friction can hold the front anywhere from 32 to 38 mm/)
  })

  test('stance shows the deceleration at which the rear wheel lifts, and says so beyond it', () => {
    const bike = bikeOf(specs['middleweight-roadster']!)
    const from = solveStance(bike, { payload: [rider('middleweight-roadster')] }).frontTravel
    const lift = liftDeceleration(bike, {
      payload: [rider('middleweight-roadster')],
      frontBrakeShare: 1,
      gasState: { exponent: 1.4, from },
    })
    expect(shown(stance, { ...SAME, situation: 'braking' }).now.output.liftDeceleration).toBe(lift)
    expect(remarksOf(stance, { situation: 'braking', deceleration: 1.2 })).toMatch(
      /the rear wheel is off the ground/,
    )
    expect(remarksOf(stance, { situation: 'braking', deceleration: 1 })).not.toMatch(
      /off the ground/,
    )
  })

  test('stance tells a stop as a result', () => {
    const heavy = shown(stance, {
      situation: 'twoUp',
      passenger: 140,
      luggage: 80,
      rider: 160,
      rearRateChange: -40,
    })
    expect(heavy.now.output.rearStop).toBe('bottomed')
    expect(
      remarksOf(stance, {
        situation: 'twoUp',
        passenger: 140,
        luggage: 80,
        rider: 160,
        rearRateChange: -40,
      }),
    ).toMatch(/The rear has used all its travel/)
  })

  test('stance from two scales says where the springs of the sheet do not carry what was read, and by how much', () => {
    const read = {
      ...SAME,
      from: 'scales',
      scaleFront: 110,
      scaleRear: 100,
      scaleFrontTravel: 45,
      scaleRearTravel: 25,
      rider: 0,
    }
    // Worked by hand at the front: (110 − 28) kg · 9.807 · cos 24.7° = 730 N; 18 · (15 + 22.9) = 682 N and 43 N of air carry it at 22.9 mm, 22.1 mm less than read
    expectNear(result(stance, read, 'scaleFrontMisfit'), 22.1, 0.4)
    expect(remarksOf(stance, read)).toMatch(
      /you read 45\.0 mm of travel at the front, 22\.1 mm more than the springs of this sheet give/,
    )
    expect(remarksOf(stance, read)).toMatch(/you read 25\.0 mm of travel at the rear/)
    // read where these springs let it stand, friction explains the rest
    const fits = remarksOf(stance, { ...read, scaleFrontTravel: 24, scaleRearTravel: 13 })
    expect(fits).not.toMatch(/On the scales you read/)
    expect(shown(stance).now.output.scaleFrontMisfit).toBeNull()
  })

  test('stance expects a length of tube on the bike of the sheet only, and a change of it on the reader’s own', () => {
    expect(remarksOf(stance, { forkPreloadChange: 5 })).toMatch(
      /mean of both readings of the tube at 119 mm/,
    )
    const own = remarksOf(stance, { forkPreloadChange: 5, from: 'own', forkTravel: 130 })
    expect(own).not.toMatch(/readings of the tube at/)
    expect(own).toMatch(/expects 4\.\d mm more of tube than before the change/)
  })

  test('stance names the cautions of every height: tubes down, a shorter shock, a larger rear tyre, a lower bike', () => {
    const cautions = (given: Given) =>
      shown(stance, { ...SAME, ...given }).now.remarks.flatMap(({ caution }) => caution ?? [])
    expect(cautions({ tubeRaise: -10 })).toContain('tubes-gripped-in-both-yokes')
    expect(cautions({ tubeRaise: 10 })).toEqual(
      expect.arrayContaining(['clearance-at-full-travel', 'ground-clearance-when-lowered']),
    )
    expect(cautions({ shockLengthChange: -5 })).toEqual(
      expect.arrayContaining(['rear-clearance', 'ground-clearance-when-lowered']),
    )
    expect(cautions({ rearRadiusChange: 6 })).toContain('rear-clearance')
    expect(cautions({})).not.toContain('rear-clearance')
    for (const id of cautions({ tubeRaise: -10, shockLengthChange: -5 }))
      expect(existsSync(`content/cautions/${id}.mdx`), id).toBe(true)
  })

  test('stance refuses a bike lighter than its wheels at the field that said so', () => {
    for (const [given, field] of [
      [{ from: 'own', mass: 60 }, 'mass'],
      [{ from: 'scales', scaleFront: 30, scaleRear: 30 }, 'scaleFront'],
    ] as const)
      expect(
        Object.keys(
          evaluate(asDefinition(stance), { bike: 'loaded-tourer', ...given }, { bikes }).problems,
        ),
      ).toEqual([field])
  })

  test('stance with five things not known is no surer than with four: the front on the brakes, the rear at full extension', () => {
    const braking = { situation: 'braking', deceleration: 0.6, from: 'own', ...SAME }
    const four = {
      ...braking,
      rake: 'unknown',
      frontShare: 'unknown',
      centreOfGravityHeight: 'unknown',
      motionRatio: 'unknown',
    }
    const [narrow, wide] = [four, { ...four, quotedFront: 'unknown' }].map(
      (given) => shown(stance, given).now.output,
    )
    const [inner, outer] = [narrow!, wide!].map((output) => output.frontTravel as Interval)
    // 84.5 to 93.3 mm with four; one at a time, five would give 87.0 to 91.1
    expectNear(inner!.low, 0.0845, 0.0005)
    expectNear(inner!.high, 0.0933, 0.0005)
    expect(outer!.low).toBeLessThanOrEqual(inner!.low)
    expect(outer!.high).toBeGreaterThanOrEqual(inner!.high)
    expect(codesOf(wide!.rearStop as Cell)).toEqual(['none', 'extended'])
    expect(remarksOf(stance, four)).toMatch(/leaves open whether the rear is fully extended/)
  })

  test('stance refuses a reduction of a rate to nothing, at its own field', () => {
    const { problems } = evaluate(
      asDefinition(stance),
      { bike: 'light-commuter', rearRateChange: -60 },
      { bikes },
    )
    expect(problems.rearRateChange).toMatch(/takes away all there is/)
  })

  test('the stance figure marks where each end stands on its force curve', () => {
    const markup = drawn(stance, StanceFigure, SAME)
    expectSound(markup)
    const [x, y] = dots(markup, 'now')[0]!
    const travel = result(stance, SAME, 'frontTravel')
    // tenths of a unit on 120 mm and some 4000 N
    expectNear(valueAt(markup, 'x', x), travel, 0.3)
    expectNear(
      valueAt(markup, 'y', y),
      forkForce(forkOf(specs['middleweight-roadster']!), travel * MM),
      20,
    )
  })
})
