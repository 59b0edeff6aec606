import { describe, expect, test } from 'vitest'
import { FIGURES } from '../../src/bikes/figures.ts'
import { inSI, sheetUnit } from '../../src/bikes/inSI.ts'
import { readSheet } from '../../src/bikes/sheet.ts'
import { bikes } from '../calculators/bikes.ts'

const roadster = bikes['middleweight-roadster']!

describe('inSI(sheet)', () => {
  test('turns every number, and leaves words as they are', () => {
    const spec = inSI(roadster)
    // by hand from the sheet: mm, N/mm, cm³, degrees, per cent and a ratio per mm
    expect(spec.wheelbase).toBeCloseTo(1.45, 12)
    expect(spec.rake).toBeCloseTo((25 * Math.PI) / 180, 12)
    expect(spec.frontShare).toBeCloseTo(0.5, 12)
    expect(spec.fork.springRate).toBeCloseTo(9000, 9)
    expect(spec.fork.stackVolume).toBeCloseTo(56e-6, 15)
    expect(spec.fork.topOut).toEqual({ rate: 30_000, length: 0.008 })
    expect(spec.frontSagWindow.rider).toEqual([0.25, 0.33])
    expect(spec.mass).toBe(200)
    expect(spec.rear.shocks).toBe(1)
    expect([spec.name, spec.fork.kind, spec.units]).toEqual([roadster.name, 'conventional', 'SI'])
    const slope = 1e-4
    const rising = { ...roadster.rear, motionRatio: { initial: 0.4, slope } }
    expect(inSI({ ...roadster, rear: rising }).rear.motionRatio.slope).toBeCloseTo(0.1, 12)
  })
  test('leaves out what a sheet leaves out', () => {
    const { topOut, ...fork } = roadster.fork
    expect(topOut).toBeDefined()
    expect(inSI({ ...roadster, fork }).fork.topOut).toBeUndefined()
  })
})

test('sheetUnit(path) is the unit of each figure that a sheet holds', () => {
  const held = FIGURES.flatMap(({ id, sheet, unit }) =>
    sheet === undefined ? [] : [{ id, sheet, unit }],
  )
  expect(held.length).toBeGreaterThan(15)
  for (const { id, sheet, unit } of held) expect(sheetUnit(sheet), id).toBe(unit)
  expect([sheetUnit('name'), sheetUnit('fork'), sheetUnit('fork.wings')]).toEqual([
    undefined,
    undefined,
    undefined,
  ])
})

test('readSheet(id, data) refuses a sheet with a number missing, a word too many or no fork of a known kind', () => {
  const { id, ...data } = roadster
  expect(readSheet(id, data)).toEqual(roadster)
  expect(() => readSheet(id, { ...data, wheelbase: undefined })).toThrow(/wheelbase/)
  expect(() => readSheet(id, { ...data, wings: 2 })).toThrow(/wings/)
  expect(() => readSheet(id, { ...data, fork: { ...data.fork, kind: 'girder' } })).toThrow(/kind/)
})
