import { describe, expect, test } from 'vitest'
import { normalStream, randomStream } from '../../src/core/index.ts'
import { groupSizes, readPeople } from '../../src/lesson/groups.ts'
import { readTable } from '../../src/lesson/readings.ts'
import type { Line } from '../../src/lesson/readings.ts'
import { readersAlone, spreadOf } from '../../src/lesson/spread.ts'
import { tellSpread } from '../../src/lesson/tellSpread.ts'

const BIKES = ['Commuter', 'Roadster', 'Tourer']
const LENGTHS = [104, 115, 121]

interface Wrong {
  reader?: number
  off?: number
  sticky?: number
}

/** Twelve readers of three bikes, three times each way, half a millimetre of scatter; what is wrong is put in. */
function classOf(seed: number, wrong: Wrong = {}): Line[] {
  const next = normalStream(randomStream(seed))
  return BIKES.flatMap((bike, at) => {
    const band = at === wrong.sticky ? 12 : 5
    return Array.from({ length: 12 }, (_, reader) => {
      const off = reader === wrong.reader ? (wrong.off ?? 0) : 0
      const one = (side: number): number => LENGTHS[at]! + off + (side * band) / 2 + 0.5 * next()
      return {
        bike,
        reader: `Reader ${reader + 1}`,
        pushed: [one(-1), one(-1), one(-1)],
        lifted: [one(1), one(1), one(1)],
      }
    })
  })
}

describe('spreadOf', () => {
  test('tells one reader who reads another edge from one fork that sticks, both in the same class', () => {
    for (let seed = 1; seed <= 40; seed++) {
      const { apart, sticky } = spreadOf(classOf(seed, { reader: 6, off: 5, sticky: 1 }))
      expect([apart, sticky]).toEqual(['Reader 7', 'Roadster'])
    }
  })

  test('a reader who is off makes no fork sticky, and a sticky fork no reader bad', () => {
    const named = (wrong: Wrong, of: 'sticky' | 'apart'): number =>
      Array.from({ length: 60 }, (_, seed) => spreadOf(classOf(seed, wrong))[of]).filter(
        (name) => name !== null,
      ).length
    // the three forks' bands are alike: one in twenty by chance is 3 of 60, and nine is more than three standard deviations above
    expect(named({ reader: 6, off: 5 }, 'sticky')).toBeLessThan(9)
    expect(named({ sticky: 1 }, 'apart')).toBeLessThan(9)
  })

  test('finds the bikes’ spread larger than the readers’, and the friction bands that were put in', () => {
    const { study, bands } = spreadOf(classOf(5, { sticky: 1 }))
    if (study === null) throw new Error('three bikes make a study')
    expect(study.variance.part).toBeGreaterThan(20 * study.variance.gauge)
    // the mean of 36 differences of half a millimetre of scatter each way is good to 0.12 mm; four times that
    expect(Math.abs(bands[1]! - 12)).toBeLessThan(0.5)
    expect(Math.abs(bands[0]! - 5)).toBeLessThan(0.5)
  })
})

test('readersAlone gives the textbook’s one-way sums, and names a reader who is off on one bike', () => {
  // three readers, by hand: means 2, 3 and 7 about 4, so 3 × (4 + 1 + 9); within 2 + 2 + 2
  const { between, within, own, readers } = readersAlone([
    [1, 2, 3],
    [2, 3, 4],
    [6, 7, 8],
  ])
  expect([between.sumOfSquares, between.degreesOfFreedom]).toEqual([42, 2])
  expect([within.sumOfSquares, within.degreesOfFreedom]).toEqual([6, 6])
  expect(own).toBe(1)
  // (21 − 1)/3 under the root
  expect(Math.abs(readers - Math.sqrt(20 / 3))).toBeLessThan(1e-12)
  const lines = classOf(3, { reader: 6, off: 5 }).filter(({ bike }) => bike === 'Roadster')
  const spread = spreadOf(lines)
  expect([spread.study, spread.apart, spread.sticky]).toEqual([null, 'Reader 7', null])
  expect(tellSpread(spread).join(' ')).toContain('There is one bike')
})

test('tellSpread names reader and fork, and what three readings buy over one', () => {
  const said = tellSpread(spreadOf(classOf(3, { reader: 6, off: 5, sticky: 1 }))).join(' ')
  expect(said).toContain('Reader 7 reads another length than the others')
  expect(said).toContain('Roadster has a wider friction band')
  // the mean of a push and a lift of half a millimetre each scatters by 0.35, and a third of that variance is left of three
  expect(said).toMatch(/scatter by 0\.3\d .*3 readings bring that down to 0\.(?:19|2\d)\./)
})

const TABLE = [
  'Bike 1; Ann; 110 111 110; 116 116 115',
  'Bike 1; Bob; 110,5 111 110; 116 116 115',
  'Bike 1; Cat; 110 111 110; 116 116 115',
  'Bike 2\tAnn\t100 101 100\t107 106 107',
  'Bike 2\tBob\t100 101 100\t107 106 107',
  'Bike 2\tCat\t100 101 100\t107 106 107',
]

describe('readTable', () => {
  test('reads semicolons, tabs and a decimal comma', () => {
    const read = readTable(TABLE.join('\n'))
    if (!('lines' in read)) throw new Error(read.problems.join(' '))
    expect(read.lines[1]).toEqual({
      bike: 'Bike 1',
      reader: 'Bob',
      pushed: [110.5, 111, 110],
      lifted: [116, 116, 115],
    })
  })

  test.each([
    ['', 'Type or paste the readings first'],
    ['Bike 1; Ann; 110 x 110; 116 116 115', '“x” is not a number'],
    ['Bike 1; Ann; 110 111 110; 116 117', 'Line 1 has 5 readings'],
    ['Bike 1; Ann; 110; 116', 'as many after a push as after a lift'],
    ['Bike 1', 'Line 1 needs a bike, a reader and readings'],
    [TABLE.slice(0, 5).join('\n'), 'Cat has no line for Bike 2'],
    [[...TABLE, TABLE[0]].join('\n'), 'Ann has 2 lines for Bike 1'],
    [TABLE.slice(0, 2).join('\n'), 'At least three readers'],
  ])('says what is wrong with %j', (text, told) => {
    const read = readTable(text)
    expect('problems' in read ? read.problems.join(' ') : 'nothing').toContain(told)
  })
})

test('groupSizes shares a class out as equally as it goes', () => {
  expect(groupSizes(12, 3)).toEqual([4, 4, 4])
  expect(groupSizes(11, 3)).toEqual([4, 4, 3])
})

test('readPeople takes a whole number, and says what is wrong with another', () => {
  expect(readPeople(' 12 ')).toEqual({ people: 12 })
  for (const text of ['2', '40', 'twelve', '']) expect(readPeople(text)).toHaveProperty('problem')
})
