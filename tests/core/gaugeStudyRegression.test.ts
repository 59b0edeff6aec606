import fc from 'fast-check'
import jstat from 'jstat'
import { Matrix, pseudoInverse } from 'ml-matrix'
import { test } from 'vitest'
import { gaugeStudy } from '../../src/core/index.ts'
import { between } from './draws.ts'
import { near } from './near.ts'

/* The analysis of variance again, as a general-purpose library does it: least squares on columns of 0 and 1 by ml-matrix, each effect the squares
   that its columns take away, and the chance by jstat's F distribution. No mean of a row or a column is formed. */

const PARTS = 4
const READERS = 3
const REPEATS = 3

const places = Array.from({ length: PARTS * READERS * REPEATS }, (_, place) => ({
  part: Math.floor(place / (READERS * REPEATS)),
  reader: Math.floor(place / REPEATS) % READERS,
}))

type Place = (typeof places)[number]
const columns = {
  parts: (at: Place) => Array.from({ length: PARTS }, (_, part) => Number(at.part === part)),
  readers: (at: Place) =>
    Array.from({ length: READERS }, (_, reader) => Number(at.reader === reader)),
  cells: (at: Place) =>
    Array.from({ length: PARTS * READERS }, (_, cell) =>
      Number(at.part * READERS + at.reader === cell),
    ),
}

/** What least squares leaves of the readings once they are explained by some columns and a constant. */
function left(values: readonly number[], ...of: (keyof typeof columns)[]): number {
  const design = new Matrix(places.map((at) => [1, ...of.flatMap((name) => columns[name](at))]))
  const readings = Matrix.columnVector(values)
  const fitted = design.mmul(pseudoInverse(design).mmul(readings))
  return Matrix.sub(readings, fitted)
    .to1DArray()
    .reduce((sum, value) => sum + value ** 2, 0)
}

const table = fc.array(
  fc.array(fc.array(between(20, 50), { minLength: REPEATS, maxLength: REPEATS }), {
    minLength: READERS,
    maxLength: READERS,
  }),
  { minLength: PARTS, maxLength: PARTS },
)

test('gaugeStudy(…) splits any table as least squares by ml-matrix does, and its chance is jstat’s', () => {
  fc.assert(
    fc.property(table, (readings) => {
      const values = readings.flat(2)
      const { lines, total, interactionChance } = gaugeStudy({ readings })
      const none = left(values)
      const additive = left(values, 'parts', 'readers')
      const cells = left(values, 'cells')
      // 36 readings about 35: a pseudo-inverse leaves a part in 10¹⁰ of their squares
      const within = 1e-9 * (none + 1)
      near(total, none, within)
      near(lines.part.sumOfSquares, none - left(values, 'parts'), within)
      near(lines.reader.sumOfSquares, none - left(values, 'readers'), within)
      near(lines.interaction.sumOfSquares, additive - cells, within)
      near(lines.repeat.sumOfSquares, cells, within)
      // readings that all repeat leave nothing to compare with
      fc.pre(cells > within)
      const [above, below] = [(PARTS - 1) * (READERS - 1), PARTS * READERS * (REPEATS - 1)]
      const ratio = (additive - cells) / above / (cells / below)
      // the library's incomplete beta function is good to some 1e-8
      near(interactionChance, 1 - jstat.centralF.cdf(ratio, above, below), 1e-7)
    }),
    { numRuns: 100 },
  )
})
