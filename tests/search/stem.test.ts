import { describe, expect, it } from 'vitest'
import { stem } from '../../src/search/stem.ts'

describe('stem', () => {
  it.each([
    [['brake', 'brakes', 'braked', 'braking']],
    [['cut', 'cuts', 'cutting']],
    [['measure', 'measures', 'measured', 'measuring']],
    [['bush', 'bushes']],
    [['body', 'bodies']],
    [['dive', 'dives', 'diving']],
    [['safe', 'safely']],
  ])('stem gives one root to %j', (forms) => {
    expect(new Set(forms.map(stem)).size).toBe(1)
  })
  it.each([
    ['ride', 'rider'],
    ['brake', 'bar'],
    ['gas', 'gap'],
    ['spring', 'spread'],
  ])('stem keeps %s and %s apart', (a, b) => {
    expect(stem(a)).not.toBe(stem(b))
  })
  it('stem leaves short words and words on -ss and -us whole', () => {
    for (const word of ['sag', 'gas', 'bus', 'mass', 'ring']) expect(stem(word)).toBe(word)
  })
})
