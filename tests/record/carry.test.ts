import type { ChoiceOutput } from '../../src/machine/statement.ts'
import { describe, expect, test } from 'vitest'
import type { WholeCalculator } from '../../src/machine/calculator.ts'
import { defaultsOf, evaluate } from '../../src/machine/evaluate.ts'
import { loadCalculator } from '../../src/calculators/index.ts'
import { decodeLink } from '../../src/machine/link.ts'
import { encodeLink } from '../../src/machine/writeLink.ts'
import type { Book } from '../../src/record/book.ts'
import { carry } from '../../src/record/carry.ts'
import type { Taken } from '../../src/record/carry.ts'
import { pairs } from '../../src/record/pairs.ts'
import { entryOf } from '../../src/record/reading.ts'
import { told } from '../../src/record/told.ts'
import { writtenBook } from './writtenBook.ts'

const length = (procedure: string, id: string, calculator?: string, input?: string): Taken => ({
  procedure,
  spec: {
    id,
    label: id,
    quantity: 'length',
    unit: 'mm',
    range: [0, 900],
    repeat: 3,
    ...(calculator && input && { to: { calculator, input } }),
  },
})

const all: Taken[] = [
  length('record-a-baseline', 'markLeft', 'marks', 'beforeLeft'),
  length('record-a-baseline', 'markRight', 'marks', 'beforeRight'),
  length('record-a-baseline', 'staticSettledUp'),
  length('measure-front-sag', 'frontTravel', 'sag', 'travel'),
  length('measure-front-sag', 'extended', 'sag', 'extended'),
  length('measure-front-sag', 'riderSettledDown', 'sag', 'settledDown'),
  length('measure-front-sag', 'riderSettledUp', 'sag', 'settledUp'),
  length('check-against-the-mark', 'markLeftAfter', 'marks', 'afterLeft'),
  length('check-against-the-mark', 'markRightAfter', 'marks', 'afterRight'),
  length('check-against-the-mark', 'markLeftCorrected', 'marks', 'afterLeft'),
]

function fill(values: Readonly<Record<string, readonly string[]>>, unit = 'mm'): Book {
  return writtenBook(
    Object.entries(values).flatMap(([name, typed]) => {
      const { procedure, spec } = all.find((taken) => taken.spec.id === name)!
      return typed.map((text, box) => [procedure, name, box, entryOf(spec, text, unit)] as const)
    }),
  )
}

const sag: WholeCalculator = loadCalculator('sag')
const marks: WholeCalculator = loadCalculator('marks')
const READ = {
  frontTravel: ['120'],
  extended: ['150', '151', '149'],
  riderSettledDown: ['112'],
  riderSettledUp: ['118,0'],
}

describe('carry(definition, procedure, readings, book)', () => {
  test('carry takes the means, and a link with them opens the same values', () => {
    const { given, complete, refused } = carry(sag, 'measure-front-sag', all, fill(READ))
    expect(given).toEqual({ travel: 120, extended: 150, settledDown: 112, settledUp: 118 })
    expect({ complete, refused }).toEqual({ complete: true, refused: [] })
    expect(
      decodeLink(sag, encodeLink(sag, { ...defaultsOf(sag), ...given }), []).given,
    ).toMatchObject(given)
  })
  test('carry converts what was read in inches: 5.9 in are 149.86 mm', () => {
    expect(carry(sag, 'measure-front-sag', all, fill({ extended: ['5.9'] }, 'in')).given).toEqual({
      extended: 149.86,
    })
  })
  test('carry names a value that the calculator’s field refuses, and leaves it out', () => {
    const { given, refused } = carry(sag, 'measure-front-sag', all, fill({ frontTravel: ['20'] }))
    expect(given).toEqual({})
    expect(refused).toEqual(['Full travel must be between 50 and 350\u00a0mm'])
  })
  test('carry holds a reading back whose boxes lie too far apart, and puts no earlier one in its place', () => {
    const { given, complete, refused } = carry(
      sag,
      'measure-front-sag',
      all,
      fill({ ...READ, riderSettledUp: ['118', '118', '98'] }),
    )
    expect(given).toEqual({ travel: 120, extended: 150, settledDown: 112 })
    expect({ complete, refused }).toEqual({
      complete: false,
      refused: ['riderSettledUp, whose readings lie too far apart'],
    })
    const corrected = {
      markLeft: ['115'],
      markLeftAfter: ['121'],
      markLeftCorrected: ['116', '125'],
    }
    expect(carry(marks, 'check-against-the-mark', all, fill(corrected)).given).toEqual({
      beforeLeft: 115,
    })
  })
  test('carry is not complete while a reading that is asked for at first is missing', () => {
    expect(carry(sag, 'measure-front-sag', all, fill({ extended: ['150'] })).complete).toBe(false)
  })
  test('carry is not complete after the work with what the rider weighed down before it', () => {
    const job = [
      ...all,
      length('refit', 'extendedAfter', 'sag', 'extended'),
      length('again', 'riderSettledDownAfter', 'sag', 'settledDown'),
      length('again', 'riderSettledUpAfter', 'sag', 'settledUp'),
    ]
    const typed = (names: Readonly<Record<string, string>>): Book =>
      writtenBook(
        Object.entries(names).map(([name, text]) => {
          const { procedure, spec } = job.find((taken) => taken.spec.id === name)!
          return [procedure, name, 0, entryOf(spec, text, 'mm')] as const
        }),
      )
    const before = {
      frontTravel: '120',
      extended: '150',
      riderSettledDown: '112',
      riderSettledUp: '118',
    }
    const complete = (here: string, names: Readonly<Record<string, string>>): boolean =>
      carry(sag, here, job, typed(names)).complete
    expect(complete('measure-front-sag', before)).toBe(true)
    expect(complete('refit', { ...before, extendedAfter: '150' })).toBe(false)
    expect(complete('again', { ...before, extendedAfter: '150' })).toBe(false)
    const after = { ...before, riderSettledDownAfter: '114', riderSettledUpAfter: '120' }
    expect(complete('refit', { ...after, extendedAfter: '150' })).toBe(true)
    // a hanging length that is not read again is the one from before
    expect(complete('again', after)).toBe(true)
  })

  test('carry takes the state before from the baseline, the later of two readings after, and the friction band from lift less push', () => {
    const book = fill({
      markLeft: ['115'],
      markRight: ['115'],
      staticSettledUp: ['120.5'],
      markLeftAfter: ['121'],
      markLeftCorrected: ['116'],
      markRightAfter: ['121.5'],
      frontTravel: ['120'],
    })
    expect(carry(marks, 'check-against-the-mark', all, book).given).toEqual({
      beforeLeft: 115,
      beforeRight: 115,
      afterLeft: 116,
      afterRight: 121.5,
      travel: 120,
      frictionBand: 5.5,
    })
  })
})

describe('told(evaluation)', () => {
  const words = (sag.outputs['window'] as ChoiceOutput).options
  const tell = (definition: WholeCalculator, given: Readonly<Record<string, number>>) =>
    told(evaluate(definition, { ...defaultsOf(definition), ...given }, { bikes: {} }))
  test('told gives the sag against the window: 150 − (112 + 118)/2 = 35 mm of 120 mm is 29 %', () => {
    expect(
      tell(
        sag,
        carry(sag, 'measure-front-sag', all, fill(READ)).given as Record<string, number>,
      )[0],
    ).toBe(
      `Your sag is 35.0\u00a0mm, 29\u00a0% of the travel. The window is 25 to 33\u00a0%: ${words['inside']}.`,
    )
  })
  test('told says that a window is the reader’s own', () => {
    expect(
      tell(sag, {
        travel: 120,
        extended: 150,
        settledDown: 112,
        settledUp: 118,
        windowLow: 10,
        windowHigh: 20,
      })[0],
    ).toBe(
      `Your sag is 35.0\u00a0mm, 29\u00a0% of the travel. The window is 10 to 20\u00a0%: ${words['more']}.`,
    )
  })
  test('told gives the reason where readings contradict one another', () => {
    expect(tell(sag, { travel: 120, extended: 150, settledDown: 118, settledUp: 112 })).toEqual([
      'The reading after lifting must not be below the one after pushing down. Check whether the two were swapped',
    ])
  })
})

describe('pairs(readings, book)', () => {
  test('pairs sets a reading beside the one after the work', () => {
    expect(pairs(all, fill({ markLeft: ['115', '116'], markLeftAfter: ['121'] }))).toEqual([
      { id: 'markLeft', label: 'markLeft', unit: 'mm', before: 115.5, after: 121 },
    ])
  })
  test('pairs leaves out a reading whose boxes lie too far apart', () => {
    expect(pairs(all, fill({ markLeft: ['115', '116'], markLeftAfter: ['121', '128'] }))).toEqual(
      [],
    )
  })
  test('pairs leaves out a reading with one side only', () => {
    expect(pairs(all, fill({ markLeft: ['115'] }))).toEqual([])
  })
})
