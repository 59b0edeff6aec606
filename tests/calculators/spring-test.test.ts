import { loadCalculator } from '../../src/calculators/index.ts'
import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import SpringTestFigure from '../../src/calculators/spring-test/Figure.tsx'
import type { Interval } from '../../src/units/interval.ts'
import { evaluate } from '../../src/machine/evaluate.ts'
import { bowOf } from '../../src/calculators/spring-test/remarks.ts'
import { dots, valueAt } from './drawn.ts'
import {
  asDefinition,
  drawn,
  expectNear,
  expectSound,
  remarksOf,
  result,
  shown,
} from './evaluated.ts'

const springTest = loadCalculator('spring-test')

const bent = [
  [290, 80],
  [280, 161],
  [270, 238],
  [260, 324],
  [250, 440],
  [240, 565],
  [230, 680],
]

describe('spring-test', () => {
  test('spring-test’s ± comes from the lengths too, where the forces lie on a line', () => {
    // 10 N/mm through five lengths 10 mm apart: Σ(x − 80)² = 1000 mm². 0.5/√3 mm on each is 2.887 N, over √1000 mm 0.0913 N/mm, times 1.96 is 0.1789
    const rows = [100, 90, 80, 70, 60].map((length) => [length, 10 * (100 - length)])
    const { low, high } = shown(springTest, { rows, lengthPlusMinus: 0.5, forcePlusMinus: 0 }).now
      .output.rate as Interval
    expectNear((high - low) / 2 / 1e3, 0.1789, 5e-5) // half the last digit worked
    // the line reaches no force at the free length, 100 mm
    expectNear(result(springTest, { rows }, 'foundLength'), 100, 1e-9)
    // what would be another spring: 1.4 times the ±
    expect(remarksOf(springTest, { rows, lengthPlusMinus: 0.1, forcePlusMinus: 0 })).toMatch(
      /more than 0\.05 N\/mm apart, which is 1\.4 times the ±/,
    )
  })

  test('spring-test starts two rates from no force at the free length as entered', () => {
    // 8 N/mm up to 40 mm of squeeze, 12 beyond, of a spring of 300 mm: the first reading of 80 N stands at 290 mm
    const rows = [290, 280, 270, 260, 250, 240, 230].map((length) => [
      length,
      8 * Math.min(40, 300 - length) + 12 * Math.max(0, 260 - length),
    ])
    const given = { rows, fit: 'two', freeLength: 300 }
    expectNear(result(springTest, given, 'rate'), 8, 1e-6)
    expectNear(result(springTest, given, 'worst'), 0, 1e-6)
    // one millimetre more of free length and no two rates pass through the readings
    expect(Math.abs(result(springTest, { ...given, freeLength: 301 }, 'worst'))).toBeGreaterThan(1)
  })

  test('spring-test reproduces the certified line of Norris', () => {
    // NIST Statistical Reference Datasets, Norris: slope 1.00211681802045, its error 0.000429796848199937, scatter 0.884796396144373.
    // Each x becomes a length of 650 − 0.6 x, so slope and error are divided by 0.6.
    const { points } = norris()
    const given = {
      rows: points.map(([x, y]) => [650 - 0.6 * x, y]),
      fit: 'line',
      lengthPlusMinus: 0,
      forcePlusMinus: 0,
    }
    expectNear(result(springTest, given, 'rate') * 0.6, 1.00211681802045, 1e-12)
    expectNear(result(springTest, given, 'rateError') * 0.6, 0.000429796848199937, 1e-12)
    expectNear(result(springTest, given, 'scatter'), 0.884796396144373, 1e-10)
    expectNear(result(springTest, given, 'rSquared'), 0.999993745883712, 1e-12)
  })

  test('spring-test widens the error of five readings by Student’s factor for three degrees', () => {
    const rows = [
      [100, 0],
      [90, 100],
      [80, 200],
      [70, 310],
      [60, 400],
    ]
    const { low, high } = shown(springTest, { rows, lengthPlusMinus: 0, forcePlusMinus: 0 }).now
      .output.rate as Interval
    // JCGM 100, table G.2: 3.18 for 95 % and 3 degrees; the error of the slope is 0.15275 N/mm
    expectNear((high - low) / 2 / 1000, 3.18 * 0.15275, 0.001) // half the last digit of 3.18
  })

  test('spring-test never claims less than the ± of its readings', () => {
    const rows = [
      [100, 100],
      [90, 200],
      [80, 300],
    ]
    const { low, high } = shown(springTest, { rows, lengthPlusMinus: 0, forcePlusMinus: 5 }).now
      .output.rate as Interval
    // a perfect line has no scatter: 5/√3 N over √200 mm is 0.2041 N/mm, times 1.96 is 0.400
    expectNear((high - low) / 2 / 1000, 0.4001, 1e-4)
  })

  test('spring-test finds two rates where there are two, and no reason for them where there is one', () => {
    const found = shown(springTest, { rows: bent, fit: 'two', freeLength: 300 }).now.output
    expect(found.kind).toBe('two-rates')
    // made from 8 and 12 N/mm meeting at 40 mm with a few newtons of scatter: within 3 %
    expectNear(Number(found.rate) / 8000, 1, 0.03)
    expectNear(Number(found.secondRate) / 12000, 1, 0.03)
    expectNear(Number(found.closesAt), 0.04, 0.002)
    expect(shown(springTest, { fit: 'two' }).now.output.kind).toBe('no-reason')
    expect(
      shown(springTest, { rows: bent.slice(0, 3), fit: 'two', freeLength: 300 }).now.output.kind,
    ).toBe('too-few')
  })

  test('spring-test tells a bow from scatter', () => {
    expect(
      bowOf([
        [1, 0, 4],
        [2, 0, -4],
        [3, 0, 4],
      ]),
    ).toBe(8)
    expect(remarksOf(springTest, { rows: bent })).toMatch(/That is a bow, not scatter/)
    expect(remarksOf(springTest)).not.toMatch(/bow/)
  })

  test('spring-test of two readings gives a slope and no word on its error', () => {
    const { now } = shown(springTest, {
      rows: [
        [300, 100],
        [250, 550],
      ],
    })
    expectNear(
      result(
        springTest,
        {
          rows: [
            [300, 100],
            [250, 550],
          ],
        },
        'rate',
      ),
      9,
      1e-9,
    )
    expect(now.output.rateError).toBeNull()
    expect(now.remarks.map(({ text }) => text).join()).toMatch(
      /Two readings give a slope and no warning/,
    )
  })

  test('spring-test names readings that make no spring', () => {
    const problems = (rows: number[][], more = {}) =>
      evaluate(asDefinition(springTest), { rows, ...more }, { bikes: {} }).problems
    expect(
      problems([
        [100, 10],
        [100, 20],
      ]),
    ).toHaveProperty('rows')
    expect(
      problems([
        [100, 20],
        [90, 10],
      ]).rows,
    ).toMatch(/force must rise/)
    expect(
      problems(
        [
          [310, 20],
          [290, 30],
        ],
        { fit: 'two', freeLength: 300 },
      ),
    ).toHaveProperty('freeLength')
  })

  test('SpringTestFigure places every reading at its length and force', () => {
    const markup = drawn(springTest, SpringTestFigure)
    expectSound(markup)
    const [chart] = markup.split('</svg>')
    const found = dots(chart!, 'now')
    expect(found).toHaveLength(6)
    // a hundredth of a unit is 0.004 mm and 0.08 N here
    expectNear(valueAt(chart!, 'x', found[0]![0]), 330, 0.02)
    expectNear(valueAt(chart!, 'y', found[0]![1]), 172, 0.5)
    expect(chart).toContain('chart-band now')
    expect(chart).toContain('chart-error now')
  })
})

function norris(): { points: [number, number][] } {
  const data = JSON.parse(
    readFileSync(new URL('../core/data/line-fits.json', import.meta.url), 'utf8'),
  ) as { norris: { x: number[]; y: number[] } }
  return { points: data.norris.x.map((x, index) => [x, data.norris.y[index]!]) }
}
