import { expect, test } from 'vitest'
import { outlineSays, visitSays } from '../../src/jobs/sum.ts'

test('says one length once where least and most round to the same quarter of an hour', () => {
  expect(outlineSays([{ minutes: [10, 20], people: 1 }])).toBe('1 step · about ¼ h · one person')
  expect(outlineSays([{ minutes: [10, 40], people: 2 }])).toBe('1 step · ¼ to ¾ h · 2 people')
  expect(visitSays([{ minutes: [60, 62], people: 2 }])).toBe('about 1 h, up to 2 people')
})
