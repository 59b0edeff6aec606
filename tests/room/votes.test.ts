import { describe, expect, test } from 'vitest'
import { actOfKey, counted, EMPTY, moved, readRoom, sumOf } from '../../src/room/votes.ts'

const key = (name: string, shiftKey = false, ctrlKey = false) => ({
  key: name,
  shiftKey,
  ctrlKey,
  metaKey: false,
  altKey: false,
})

describe('counted', () => {
  test('adds a hand to the vote that is counted, and takes none below zero', () => {
    const two = counted(counted(EMPTY, 'a', 1), 'a', 1)
    expect(two.first).toEqual({ a: 2 })
    expect(counted(EMPTY, 'b', -1).first).toEqual({ b: 0 })
  })

  test('keeps the first vote while the second is counted, and counts nothing in between or after', () => {
    const talk = moved(counted(EMPTY, 'a', 1), 1)
    expect(counted(talk, 'a', 1)).toEqual(talk)
    const second = counted(moved(talk, 1), 'c', 1)
    expect([second.first, second.second]).toEqual([{ a: 1 }, { c: 1 }])
    const shown = moved(second, 1)
    expect(shown.stage).toBe('shown')
    expect(counted(shown, 'a', 1)).toEqual(shown)
    expect(sumOf(shown.second)).toBe(1)
  })
})

test('moved stays at its ends', () => {
  expect(moved(EMPTY, -1)).toEqual(EMPTY)
  expect(moved({ ...EMPTY, stage: 'shown' }, 1).stage).toBe('shown')
})

test.each([
  [key('a'), { count: 'a', by: 1 }],
  [key('D', true), { count: 'd', by: -1 }],
  [key('e'), null],
  [key('a', false, true), null],
  [key('PageDown'), 'next'],
  [key('PageUp'), 'back'],
  [key('.'), 'blank'],
  [key('Escape'), 'close'],
])('actOfKey reads %o', (event, act) => {
  expect(actOfKey(event, true)).toEqual(act)
})

test('actOfKey leaves letters alone where they are switched off', () => {
  expect(actOfKey(key('a'), false)).toBeNull()
  expect(actOfKey(key('PageDown'), false)).toBe('next')
})

test('readRoom keeps what can be used of what was stored', () => {
  expect(readRoom({ stage: 'talk', first: { a: 3, b: -1, x: 4 }, second: 'no' })).toEqual({
    stage: 'talk',
    first: { a: 3 },
    second: {},
  })
  expect(readRoom(null)).toEqual(EMPTY)
})
