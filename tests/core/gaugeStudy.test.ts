import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { gaugeStudy } from '../../src/core/index.ts'
import { near, same } from './near.ts'

interface Published {
  studies: {
    data: number[][][]
    published: Record<string, { value: number; tol_abs: number }>
  }[]
}

/* AIAG, Measurement Systems Analysis, 4th ed. 2010, chapter III, as transcribed in public test files: see the file's own notes on source and tolerances. */
const { studies } = JSON.parse(
  readFileSync(new URL('data/gauge_study.json', import.meta.url), 'utf8'),
) as Published
const [manual] = studies

test('gaugeStudy(…) gives the published analysis of the manual’s ten parts, three readers and three repeats', () => {
  const study = gaugeStudy({ readings: manual!.data })
  const { part, reader, interaction, repeat } = study.lines
  const { variance, pooled } = study
  const sd = (of: keyof typeof variance): number => Math.sqrt(variance[of])
  const share = (of: keyof typeof variance): number => (100 * variance[of]) / variance.total
  const computed: Record<string, number> = {
    ss_part: part.sumOfSquares,
    ss_reader: reader.sumOfSquares,
    ss_interaction: interaction.sumOfSquares,
    ss_repeat: repeat.sumOfSquares,
    ss_total: study.total,
    ms_part: part.meanSquare,
    ms_reader: reader.meanSquare,
    ms_interaction: interaction.meanSquare,
    ms_repeat: repeat.meanSquare,
    F_interaction: interaction.meanSquare / repeat.meanSquare,
    p_interaction: study.interactionChance,
    pooled_ss_repeat: pooled.sumOfSquares,
    pooled_ms_repeat: pooled.meanSquare,
    pooled_df: pooled.degreesOfFreedom,
    var_gauge: variance.gauge,
    var_repeatability: variance.repeatability,
    var_reproducibility: variance.reproducibility,
    var_part: variance.part,
    sd_repeatability: sd('repeatability'),
    sd_reproducibility: sd('reproducibility'),
    sd_gauge: sd('gauge'),
    sd_part: sd('part'),
    sd_total: sd('total'),
    percent_gauge: share('gauge'),
    percent_repeatability: share('repeatability'),
    percent_reproducibility: share('reproducibility'),
    percent_part: share('part'),
    study_percent_gauge: (100 * sd('gauge')) / sd('total'),
    categories_before_rounding_down: (Math.SQRT2 * sd('part')) / sd('gauge'),
  }
  for (const [name, value] of Object.entries(computed)) {
    const { value: published, tol_abs: tolerance } = manual!.published[name]!
    near(value, published, tolerance)
  }
})

const cell = fc.array(fc.double({ min: -100, max: 100, noNaN: true }), {
  minLength: 3,
  maxLength: 3,
})
const table = fc.array(fc.array(cell, { minLength: 3, maxLength: 3 }), {
  minLength: 4,
  maxLength: 4,
})

test('gaugeStudy(…): the four sums of squares make the total, whatever is added to every reading', () => {
  fc.assert(
    fc.property(table, fc.double({ min: -50, max: 50, noNaN: true }), (readings, shift) => {
      const { lines, total } = gaugeStudy({ readings })
      const sum = Object.values(lines).reduce((all, each) => all + each.sumOfSquares, 0)
      // sums of 36 squares up to 10⁴: rounding leaves a part in 10¹⁰ of the total at most
      near(sum, total, 1e-9 * total + 1e-9)
      const moved = gaugeStudy({
        readings: readings.map((p) => p.map((c) => c.map((v) => v + shift))),
      })
      near(moved.variance.part, gaugeStudy({ readings }).variance.part, 1e-7 * total + 1e-7)
    }),
  )
})

test('gaugeStudy(…): readers of one mind and bikes that are alike leave repeats alone', () => {
  const readings = [
    [
      [1, 2],
      [1, 2],
    ],
    [
      [1, 2],
      [1, 2],
    ],
  ]
  const { variance, interactionChance } = gaugeStudy({ readings })
  same(variance.reproducibility, 0)
  same(variance.part, 0)
  // four sums of 0.5 over five degrees, interaction pooled
  same(variance.repeatability, 2 / 5)
  same(interactionChance, 1)
})

test.each([
  [
    'a hole',
    [
      [[1, 2], [1]],
      [
        [1, 2],
        [1, 2],
      ],
    ],
  ],
  ['one reader', [[[1, 2]], [[1, 2]]]],
  [
    'one reading each',
    [
      [[1], [2]],
      [[1], [2]],
    ],
  ],
])('gaugeStudy(…) refuses %s', (_what, readings) => {
  expect(() => gaugeStudy({ readings })).toThrow(/at least two/)
})
