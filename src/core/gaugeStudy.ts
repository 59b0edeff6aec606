import { DomainError, finite, list, record } from './domain.ts'
import { varianceRatioTail } from './fisher.ts'

/** One line of the analysis: a sum of squares [unit²], its degrees of freedom, and their quotient [unit²]. */
export interface SquaresLine {
  sumOfSquares: number
  degreesOfFreedom: number
  meanSquare: number
}

/** Spread of readings split into what makes it. Variances [unit²] are never below 0: chance can make an estimate come out so. */
export interface GaugeStudy {
  lines: Record<'part' | 'reader' | 'interaction' | 'repeat', SquaresLine>
  total: number
  /** interaction and repeats in one: what the variances come from unless the interaction is kept */
  pooled: SquaresLine
  /** probability that chance alone makes the readers differ from part to part as much as they do */
  interactionChance: number
  variance: Record<'repeatability' | 'reproducibility' | 'gauge' | 'part' | 'total', number>
}

type Readings = readonly (readonly (readonly number[])[])[]

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length
const squares = (values: readonly number[], about: number): number =>
  values.reduce((sum, value) => sum + (value - about) ** 2, 0)
const line = (sumOfSquares: number, degreesOfFreedom: number): SquaresLine => ({
  sumOfSquares,
  degreesOfFreedom,
  meanSquare: sumOfSquares / degreesOfFreedom,
})

/** Refuses what is not a full table, at least two of each. */
function checked(readings: Readings): { parts: number; readers: number; repeats: number } {
  const parts = list('readings', readings).length
  const readers = readings[0]?.length ?? 0
  const repeats = readings[0]?.[0]?.length ?? 0
  const full = readings.every(
    (part) => part.length === readers && part.every((cell) => cell.length === repeats),
  )
  if (!full || parts < 2 || readers < 2 || repeats < 2)
    throw new DomainError(
      'readings',
      readings,
      'must hold as many repeats, at least two, of at least two readers on each of at least two parts',
    )
  readings.flat(2).forEach((value) => finite('readings', value))
  return { parts, readers, repeats }
}

/**
 * A crossed study of readings [part][reader][repeat], in any one unit: analysis of variance with random effects, by means. The interaction
 * is pooled with the repeats. Refuses a table with holes or with fewer than two of anything. Source: AIAG, Measurement Systems
 * Analysis, 4th ed. 2010, ch. III (as transcribed in public test files).
 */
export function gaugeStudy(study: { readings: Readings }): GaugeStudy {
  const { readings } = record('study', study)
  const { parts, readers, repeats } = checked(readings)
  const every = readings.flat(2)
  const grand = mean(every)
  const partMeans = readings.map((part) => mean(part.flat()))
  const readerMeans = readings[0]!.map((_, reader) =>
    mean(readings.flatMap((part) => part[reader]!)),
  )
  const cells = readings.flat()
  const cellMeans = cells.map(mean)
  const part = line(readers * repeats * squares(partMeans, grand), parts - 1)
  const reader = line(parts * repeats * squares(readerMeans, grand), readers - 1)
  const between = repeats * squares(cellMeans, grand)
  const interaction = line(
    Math.max(0, between - part.sumOfSquares - reader.sumOfSquares),
    (parts - 1) * (readers - 1),
  )
  const within = cells.reduce((sum, cell, index) => sum + squares(cell, cellMeans[index]!), 0)
  const repeat = line(within, parts * readers * (repeats - 1))
  const pooled = line(
    interaction.sumOfSquares + within,
    interaction.degreesOfFreedom + repeat.degreesOfFreedom,
  )
  const repeatability = pooled.meanSquare
  const above = (square: number, count: number): number =>
    Math.max(0, (square - repeatability) / count)
  const reproducibility = above(reader.meanSquare, parts * repeats)
  const gauge = repeatability + reproducibility
  const partVariance = above(part.meanSquare, readers * repeats)
  return {
    lines: { part, reader, interaction, repeat },
    total: squares(every, grand),
    pooled,
    interactionChance: chanceOf(interaction, repeat),
    variance: {
      repeatability,
      reproducibility,
      gauge,
      part: partVariance,
      total: gauge + partVariance,
    },
  }
}

/** Readings that repeat to the last digit leave nothing to compare with. */
const chanceOf = (interaction: SquaresLine, repeat: SquaresLine): number =>
  repeat.meanSquare === 0
    ? Number(interaction.meanSquare === 0)
    : varianceRatioTail({
        ratio: interaction.meanSquare / repeat.meanSquare,
        above: interaction.degreesOfFreedom,
        below: repeat.degreesOfFreedom,
      })
