import { farValue, gaugeStudy, largestMean, wideVariance } from '../core/index.ts'
import type { GaugeStudy } from '../core/index.ts'
import type { Line } from './readings.ts'

/** How often a class without a fault may have somebody or something named. */
const CHANCE = 0.05

/** One-way analysis of variance: sums of squares [unit²] and standard deviations [unit]. */
export interface ReadersAlone {
  between: { sumOfSquares: number; degreesOfFreedom: number }
  within: { sumOfSquares: number; degreesOfFreedom: number }
  /** of one reader’s own repeats, and from reader to reader beyond what repeats explain */
  own: number
  readers: number
}

/** What a table of readings says; numbers in the class’s unit. */
export interface Spread {
  /** two-way; null with one bike, which is its own and only part */
  study: GaugeStudy | null
  /** how often each reader read each bike */
  repeats: number
  /** readers and repeats of the first bike, for a class that has one alone */
  readersAlone: ReadersAlone
  bikes: readonly string[]
  readers: readonly string[]
  /** friction band of each bike: lifted less pushed, the mean of all readers */
  bands: readonly number[]
  /** reads another length than the others do, on every bike */
  apart: string | null
  /** whose own repeats lie further apart than the others’ */
  scattered: string | null
  /** whose friction band is wider than every other bike’s */
  sticky: string | null
}

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length

const varianceOf = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + (value - mean(values)) ** 2, 0) / (values.length - 1)

/** The balance that each pair of readings points to. */
const balances = ({ pushed, lifted }: Line): number[] =>
  pushed.map((value, index) => (value + lifted[index]!) / 2)

/** Whose readings of one bike differ by how much (one-way analysis of variance with random effects). */
export function readersAlone(readings: readonly (readonly number[])[]): ReadersAlone {
  const repeats = readings[0]!.length
  const grand = mean(readings.flat())
  const sum = (values: readonly number[]): number => values.reduce((all, value) => all + value, 0)
  const between = {
    sumOfSquares: repeats * sum(readings.map((own) => (mean(own) - grand) ** 2)),
    degreesOfFreedom: readings.length - 1,
  }
  const within = {
    sumOfSquares: sum(readings.map((own) => (repeats - 1) * varianceOf(own))),
    degreesOfFreedom: readings.length * (repeats - 1),
  }
  const repeatability = within.sumOfSquares / within.degreesOfFreedom
  const above = between.sumOfSquares / between.degreesOfFreedom - repeatability
  return {
    between,
    within,
    own: Math.sqrt(repeatability),
    readers: Math.sqrt(Math.max(0, above) / repeats),
  }
}

/** Tells reader from bike in a full table of readings. */
export function spreadOf(lines: readonly Line[]): Spread {
  const bikes = [...new Set(lines.map(({ bike }) => bike))]
  const readers = [...new Set(lines.map(({ reader }) => reader))]
  const lineOf = (bike: string, reader: string): Line =>
    lines.find((line) => line.bike === bike && line.reader === reader)!
  const readings = bikes.map((bike) => readers.map((reader) => balances(lineOf(bike, reader))))
  const bandsOf = (bike: string): number[] =>
    readers.map((reader) => {
      const { pushed, lifted } = lineOf(bike, reader)
      return mean(lifted) - mean(pushed)
    })
  const readerMeans = readers.map((_, at) => mean(readings.flatMap((part) => part[at]!)))
  const own = readers.map((_, at) => mean(readings.map((part) => varianceOf(part[at]!))))
  const repeats = readings[0]![0]!.length
  const bands = bikes.map(bandsOf)
  const nameOf = (names: readonly string[], at: number | null): string | null =>
    at === null ? null : names[at]!
  return {
    study: bikes.length > 1 ? gaugeStudy({ readings }) : null,
    repeats,
    readersAlone: readersAlone(readings[0]!),
    bikes,
    readers,
    bands: bands.map(mean),
    apart: nameOf(readers, farValue({ values: readerMeans, chance: CHANCE })),
    scattered: nameOf(
      readers,
      wideVariance({
        variances: own,
        degreesOfFreedom: (repeats - 1) * bikes.length,
        chance: CHANCE,
      }),
    ),
    sticky: bikes.length > 1 ? nameOf(bikes, largestMean({ groups: bands, chance: CHANCE })) : null,
  }
}
