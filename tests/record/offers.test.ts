import { describe, expect, test } from 'vitest'
import type { Taken } from '../../src/record/carry.ts'
import { changedJob } from '../../src/record/jobSheets.ts'
import { offersFor } from '../../src/record/offers.ts'
import { newBike, newJob } from '../../src/record/records.ts'
import type { BikeRecord, JobRecord } from '../../src/record/records.ts'
import { repeated } from '../../src/record/series.ts'

const spec = (procedure: string, id: string, unit = 'mm', label = id): Taken => ({
  procedure,
  spec: { id, label, quantity: unit === 'kg' ? 'mass' : 'length', unit, range: [0, 1000] },
})
const taken = [
  spec('measure-front-sag', 'extended'),
  spec('measure-front-sag', 'riderSettledDown', 'mm', 'Exposed tube, rider on, after a push down'),
  spec('measure-front-sag', 'riderSettledUp', 'mm', 'Exposed tube, rider on, after a lift'),
  spec(
    'measure-again',
    'riderSettledDownAfter',
    'mm',
    'Exposed tube after the work, rider on, after a push down',
  ),
  spec('measure-again', 'riderSettledUpAfter'),
  spec('weigh-the-bike', 'frontScale', 'kg'),
]
const bike = newBike('b1', { name: 'Roadster', like: 'middleweight-roadster', made: '2026-03-12' })
const job = (id: string, opened: string): JobRecord =>
  newJob(id, { bike: 'b1', kind: 'loose', opened })
const read = (
  into: JobRecord,
  procedure: string,
  values: Record<string, number[]>,
  at: string,
): JobRecord =>
  Object.entries(values).reduce(
    (now, [reading, boxes]) =>
      boxes.reduce(
        (each, value, box) =>
          changedJob(each, {
            do: 'write',
            procedure,
            reading,
            box,
            entry: {
              typed: String(value),
              unit: procedure === 'weigh-the-bike' ? 'kg' : 'mm',
              value,
            },
            at,
          }),
        now,
      ),
    into,
  )
const march = read(
  read(
    job('j1', '2026-03-12'),
    'measure-front-sag',
    { extended: [150, 150.4], riderSettledDown: [110], riderSettledUp: [116] },
    '2026-03-12',
  ),
  'weigh-the-bike',
  { frontScale: [99, 101] },
  '2026-03-12',
)
const june = read(
  job('j2', '2026-06-18'),
  'measure-again',
  { riderSettledDownAfter: [111], riderSettledUpAfter: [115] },
  '2026-06-18',
)

describe('offersFor(bike, jobs, all)', () => {
  const offers = (of: BikeRecord, jobs: JobRecord[]) =>
    new Map(offersFor(of, jobs, taken).map(({ definition, figure }) => [definition.id, figure]))
  test('offers readings as figures, with their day, where they came from and half their spread', () => {
    const found = offers(bike, [march])
    expect(found.get('frontScale')).toEqual({
      value: 100,
      plusMinus: 1,
      from: 'measured',
      date: '2026-03-12',
      of: 'j1 weigh-the-bike frontScale',
    })
    expect(found.get('fork.exposedTube')).toMatchObject({ value: 150.2, plusMinus: 0.2 })
    // 150.2 − (110 + 116) ÷ 2 = 37.2 mm
    expect(found.get('frontRiderSag')?.value).toBeCloseTo(37.2, 9)
    expect(found.has('frontStaticSag')).toBe(false)
  })
  test('a reading after the work is the newer sag', () => {
    // 150.2 − (111 + 115) ÷ 2 = 37.2 mm as well: another number tells them apart
    const later = read(june, 'measure-again', { riderSettledUpAfter: [117] }, '2026-06-18')
    expect(offers(bike, [later, march]).get('frontRiderSag')).toMatchObject({
      value: 36.2,
      date: '2026-06-18',
    })
  })
  test('offers nothing that the bike has, nor an older reading in place of a newer figure', () => {
    const figure = (value: number, date: string) => ({ value, from: 'measured' as const, date })
    const has = {
      ...bike,
      figures: {
        frontScale: figure(100, '2026-01-01'),
        'fork.exposedTube': figure(151, '2026-04-01'),
      },
    }
    const found = offers(has, [march])
    expect([found.has('frontScale'), found.has('fork.exposedTube')]).toEqual([false, false])
    expect(offers({ ...bike, id: 'b2' }, [march]).size).toBe(0)
  })
  test('offers no mean of readings that lie apart', () => {
    const apart = read(march, 'measure-front-sag', { extended: [150, 158] }, '2026-03-12')
    expect(offers(bike, [apart]).has('fork.exposedTube')).toBe(false)
  })
})

describe('repeated(jobs, all)', () => {
  test('a reading taken before and after is one series, with friction’s band from pushed down to lifted', () => {
    const [series, ...others] = repeated([june, march], taken)
    expect(others).toEqual([])
    expect(series).toMatchObject({
      id: 'riderSettled',
      unit: 'mm',
      label: 'Exposed tube, rider on',
    })
    expect(series?.points.map(({ at, low, mean, high }) => [at, low, mean, high])).toEqual([
      ['2026-03-12', 110, 113, 116],
      ['2026-06-18', 111, 113, 115],
    ])
  })
})
