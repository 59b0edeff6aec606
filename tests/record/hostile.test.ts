import { describe, expect, test } from 'vitest'
import { fileText, readFile } from '../../src/record/recordFile.ts'
import type { Records } from '../../src/record/records.ts'
import { hostile, marked } from './hostileFiles.ts'

describe('readFile(text, today) of files that are meant to do harm', () => {
  test('there are fifty and more', () => {
    expect(Object.keys(hostile).length).toBeGreaterThan(50)
  })

  test.each(Object.entries(hostile))(
    'refuses %s in whole sentences that say what to do',
    (_, text) => {
      const reading = readFile(text, '2026-03-12')
      if (!('problem' in reading)) throw new Error('it was taken')
      expect(reading.problem).toMatch(/^The file .+[.;:] .*(Choose|save it again|Open a newer)/)
      expect(reading.problem.length).toBeLessThan(400)
      // nothing of it reached what all objects share
      expect(Reflect.get({}, 'hit')).toBeUndefined()
      expect(Object.getOwnPropertyNames(Object.prototype)).not.toContain('value')
    },
  )

  test('takes markup in every text as the text that it is', () => {
    const records = marked as unknown as Records
    expect(readFile(fileText(records, 'e', '2026-03-12'), '2026-03-12')).toEqual({ records })
  })
})
