import { describe, expect, test } from 'vitest'
import { bikeOfCode, readBikeCode, sheetOfCode } from '../../src/bikes/bikeCode.ts'
import { bikeOf } from '../../src/bikes/bikes.ts'
import { inSI } from '../../src/bikes/inSI.ts'
import { FIGURES } from '../../src/bikes/figures.ts'
import { bikeCode, figuresInCode, sheetFigure } from '../../src/bikes/ownBike.ts'
import { solveStance } from '../../src/core/index.ts'
import { decodeLink } from '../../src/machine/link.ts'
import { encodeLink } from '../../src/machine/writeLink.ts'
import { defaultsOf, evaluate } from '../../src/machine/evaluate.ts'
import { loadCalculator } from '../../src/calculators/index.ts'
import { bikes } from '../calculators/bikes.ts'

const roadster = bikes['middleweight-roadster']!

describe('bikeCode(standIn, figures)', () => {
  test('names the stand-in and what differs, and nothing that is the same', () => {
    expect(bikeCode(roadster, {})).toBe('middleweight-roadster')
    expect(bikeCode(roadster, { mass: 210, 'fork.springRate': 9.5, wheelbase: 1450 })).toBe(
      'middleweight-roadster;mass:210;fork.springRate:9.5',
    )
    // one ratio is known, so that it is taken for the whole travel; where the rider sits is a share of the wheelbase that was given
    expect(bikeCode(roadster, { 'rear.motionRatio': 0.5, riderShare: 40, wheelbase: 1400 })).toBe(
      'middleweight-roadster;rear.motionRatio.initial:0.5;rear.motionRatio.slope:0;wheelbase:1400;rider.x:560',
    )
  })
  test('gives back the figures, and a bike that stands as they say', () => {
    const figures = { mass: 210, frontShare: 48, 'fork.springRate': 9.5, riderShare: 44 }
    const code = bikeCode(roadster, figures)
    const back = figuresInCode(code, bikes)
    for (const [id, value] of Object.entries(figures)) expect(back[id]).toBeCloseTo(value, 6)
    expect(Object.keys(back)).toHaveLength(4)
    const stance = solveStance(bikeOf(bikeOfCode(code, bikes)!), {})
    // 210 kg, 48 % of it in front: 988.5 N; the share is that of the bike as it settles, so to a thousandth
    expect(stance.frontLoad / (210 * 9.80665)).toBeCloseTo(0.48, 3)
  })
  test('every figure of a sheet can be read from it', () => {
    for (const { id, sheet } of FIGURES)
      if (sheet !== undefined) expect(typeof sheetFigure(roadster, id), id).toBe('number')
  })
})

describe('bikeOfCode(code, bikes)', () => {
  test.each([
    ['a bike that there is not', 'fast-one;mass:200'],
    ['a name of what all objects have', 'constructor'],
    ['a number that is none', 'middleweight-roadster;mass:1e9'],
    ['a place that no sheet has', 'middleweight-roadster;wings:2'],
    ['a place that holds no number', 'middleweight-roadster;fork:2'],
    ['a place reached through what all objects have', 'middleweight-roadster;constructor.length:2'],
    ['nothing between its marks', 'middleweight-roadster;;'],
  ])('gives none for %s', (_, code) => expect(bikeOfCode(code, bikes)).toBeNull())
  test('gives an invented bike for its id, and the same one each time for a code', () => {
    expect(sheetOfCode('middleweight-roadster', bikes)).toBe(roadster)
    expect(bikeOfCode('middleweight-roadster', bikes)).toEqual(inSI(roadster))
    const code = 'middleweight-roadster;mass:210'
    expect(bikeOfCode(code, bikes)).toBe(bikeOfCode(code, bikes))
    expect(readBikeCode(code, Object.keys(bikes))).toEqual({
      like: 'middleweight-roadster',
      numbers: { mass: 210 },
    })
  })
})

describe('a link with a reader’s bike', () => {
  const loads = loadCalculator('wheel-loads')
  const given = { ...defaultsOf(loads), bike: 'middleweight-roadster;mass:210;frontShare:48' }
  test('holds its numbers and opens with them', () => {
    const query = encodeLink(loads, given)
    expect(query).toContain('bike=middleweight-roadster;mass:210;frontShare:48')
    expect(decodeLink(loads, query, Object.keys(bikes))).toMatchObject({ given, problems: [] })
    const result = evaluate(loads, { ...given, rider: 0 }, { bikes })
    // 210 kg × 9.80665 m/s² = 2059.4 N
    const { frontLoad, rearLoad } = result.now!.output
    expect(Number(frontLoad) + Number(rearLoad)).toBeCloseTo(2059.4, 1)
  })
  test('says so where its figures can’t go with one another', () => {
    const result = evaluate(loads, { ...given, bike: 'middleweight-roadster;mass:40' }, { bikes })
    expect(result.problems['bike']).toMatch(/figures of this bike can’t go with one another/)
    expect(result.now).toBeNull()
  })
})
