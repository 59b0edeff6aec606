import { describe, expect, test } from 'vitest'
import { DomainError } from '../../src/core/domain.ts'
import { tyreRadius } from '../../src/core/tyre.ts'
import { expectRefusal, expectWithin, rounding } from './tolerance.ts'

describe('tyreRadius', () => {
  test.each([
    ['120/70-17', 600],
    ['180/55-17', 630],
    ['160/60-17', 624],
    ['190/50-17', 622],
    ['110/80-19', 659],
  ])(
    'tyreRadius(%o) is half of the design diameter, %d mm (UN R75, 6.1.2.1 and section 2; from memory)',
    (marking, diameter) => {
      expectWithin(tyreRadius(marking), diameter / 2000, 0.0005) // half a millimetre: the rounding of the printed diameter
    },
  )

  test('tyreRadius reads the same size however the marking is written', () => {
    const ways = [
      '120/70 ZR 17 M/C',
      '120/70R17',
      '120/70ZR17 (58W)',
      '120/70 ZR17 M/C (58W) TL',
      '120/70–17',
      ' 120 / 70 - 17 ',
      '120/70 17',
      '120/70zr17',
      '120/70 Z  R 17',
      '120/70−17',
      '120/70 V17',
    ]
    for (const way of ways) expect(tyreRadius(way), way).toBe(tyreRadius('120/70-17'))
    expect(tyreRadius('130/90B16 73H')).toBe(tyreRadius('130/90-16 M/C 67H REINF'))
  })

  test('tyreRadius takes an inch section as high as it is wide, and a low section (.10, .60) at 85 % (ISO 4249, from memory)', () => {
    // 457/2 + 3.00 × 25.4 = 304.7 mm; 457/2 + 0.85 × 4.10 × 25.4 = 317.02 mm
    expectWithin(tyreRadius('3.00-18'), 0.3047, rounding(1))
    expectWithin(tyreRadius('4.10-18'), 0.317019, rounding(1))
    expectWithin(tyreRadius('4.25/85-18'), 0.3202575, rounding(1))
    expect(tyreRadius('3,00-18')).toBe(tyreRadius('3.00-18'))
    expect(tyreRadius('3.00 S 18 4PR')).toBe(tyreRadius('3.00-18'))
    expectWithin(tyreRadius('2-17'), 0.2668, rounding(1))
  })

  test('tyreRadius reads letter codes as the metric size of their width (common practice: the trade’s conversion tables)', () => {
    expectWithin(tyreRadius('MT90-16'), tyreRadius('130/90-16'), 0)
    expectWithin(tyreRadius('MH90-21'), tyreRadius('80/90-21'), 0)
    expectWithin(tyreRadius('MU85B16'), tyreRadius('140/85-16'), 0)
    expectWithin(tyreRadius('mt90 hb 16'), tyreRadius('130/90-16'), 0)
    expect(() => tyreRadius('ML90-18')).toThrow(/width letter/)
  })

  test('tyreRadius grows with width, aspect ratio and rim', () => {
    expect(tyreRadius('130/70-17')).toBeGreaterThan(tyreRadius('120/70-17'))
    expect(tyreRadius('120/80-17')).toBeGreaterThan(tyreRadius('120/70-17'))
    expect(tyreRadius('120/70-18')).toBeGreaterThan(tyreRadius('120/70-17'))
  })

  test('tyreRadius takes the low section for widths that end in .1 or .6 alone', () => {
    expectWithin(tyreRadius('4.1-18'), 0.2285 + 0.85 * 4.1 * 0.0254, rounding(1))
    expectWithin(tyreRadius('3.60-18'), 0.2285 + 0.85 * 3.6 * 0.0254, rounding(1))
    expectWithin(tyreRadius('3.65-18'), 0.2285 + 3.65 * 0.0254, rounding(1))
    expectWithin(tyreRadius('3.25-18'), 0.2285 + 3.25 * 0.0254, rounding(1))
  })

  test('tyreRadius allows aspect ratios from 25 to 110 % and widths from 40 to 400 mm, ends included', () => {
    for (const [marking, radius] of [
      ['120/25-17', 0.246],
      ['120/110-17', 0.348],
      ['40/100-17', 0.256],
      ['400/50-17', 0.416],
    ] as const) {
      // prettier-ignore
      expectWithin(tyreRadius(marking), radius, rounding(1))
    }
    for (const marking of ['120/24-17', '120/111-17'])
      expect(() => tyreRadius(marking), marking).toThrow(/aspect ratio/)
    for (const marking of ['39/90-17', '401/50-17', '1.5-17'])
      expect(() => tyreRadius(marking), marking).toThrow(/section width/)
  })

  test('tyreRadius refuses what it cannot read and says what it expects', () => {
    for (const marking of [
      '',
      'tyre',
      '120/70',
      '12070-17',
      '120/70-17 and more',
      '-120/70-17',
      '120/70-1.7',
      'T90-16',
      'MT-16',
      '1e2/70-17',
      '0/70-17',
    ]) {
      expectRefusal(() => tyreRadius(marking), 'marking')
    }
    expect(() => tyreRadius('hello')).toThrow(/such as '120\/70-17'.*'3\.00-18'.*'MT90-16'/)
    expect(() => tyreRadius('120/70-30')).toThrow(/rim code from 4 to 23/)
    expect(() => tyreRadius('120/10-17')).toThrow(/aspect ratio/)
    expect(() => tyreRadius('999/70-17')).toThrow(/section width/)
    expect(() => tyreRadius(120 as unknown as string)).toThrow(DomainError)
    expect(() => tyreRadius(undefined as unknown as string)).toThrow(DomainError)
  })
})
