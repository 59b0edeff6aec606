import { describe, expect, it } from 'vitest'
import { leaning } from '../../src/search/intent.ts'

describe('leaning', () => {
  it.each([
    ['How do I measure sag', 'procedure'],
    ["what's preload", 'glossary'],
    ['what does 10w mean', 'glossary'],
    ['braking dive calculator', 'calculator'],
    ['is it safe to cut a spring', 'caution'],
    ['trail formula', 'chapter'],
    ['half day class', 'lesson'],
  ] as const)('leaning of “%s” favours the kind %s', (text, kind) => {
    expect(leaning(text)(kind)).toBeGreaterThan(1)
    expect(leaning(text)('symptom')).toBe(1)
  })
  it('leaning of plain words favours nothing', () => {
    expect(leaning('preload adjuster')('procedure')).toBe(1)
  })
})
