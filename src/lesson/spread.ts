import { farValue, gaugeStudy, largestMean, wideVariance } from '../core/index.ts'
import type { GaugeStudy } from '../core/index.ts'
import type { Line } from './readings.ts'

/** How often a class without a fault may have somebody or something named. */
const CHANCE = 0.05

/** What a table of readings says; numbers in the class’s unit. */
export interface Spread {
  study: GaugeStudy
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
    study: gaugeStudy({ readings }),
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
    sticky: nameOf(bikes, largestMean({ groups: bands, chance: CHANCE })),
  }
}
