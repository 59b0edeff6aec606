import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { type Bike, type LoadCase, solveStance, type TravelLimit } from '../../src/core/index.ts'
import { near } from './near.ts'

interface Case {
  id: string
  bike: Bike
  load: LoadCase
  settle: number
  expected: {
    [angleOrLengthOrForce: string]: unknown
    frontStop: string
    rearStop: string
    frontLimit: TravelLimit
    rearLimit: TravelLimit
    centreOfGravity: { x: number; z: number }
  }
}

// Solved by virtual work with numeric derivatives, by a program that shares no code or equation with this one; the bikes are invented.
const file = JSON.parse(
  readFileSync(new URL('data/stance-cases.json', import.meta.url), 'utf8'),
) as { cases: Case[] }

// Each tolerance comes with the data: what the other program's numeric derivatives leave.
const tolerances = {
  frontTravel: 2e-7,
  rearTravel: 2e-7,
  frontLoad: 2e-4,
  rearLoad: 2e-4,
  frontStopForce: 5e-3,
  rearStopForce: 5e-3,
  pitch: 2e-7,
  rake: 2e-7,
  trail: 2e-7,
  normalTrail: 2e-7,
  wheelbase: 2e-7,
} as const

describe('stances solved by virtual work', () => {
  test('solveStance(…) is checked against 90 of them', () => expect(file.cases).toHaveLength(90))

  test.each(file.cases)('solveStance(…) agrees on $id', ({ bike, load, settle, expected }) => {
    const stance = solveStance(bike, load, { settle })
    for (const [field, tolerance] of Object.entries(tolerances))
      near(stance[field as keyof typeof tolerances], expected[field] as number, tolerance)
    for (const axis of ['x', 'z'] as const)
      near(stance.centreOfGravity[axis], expected.centreOfGravity[axis], 2e-7)
    expect([stance.frontStop, stance.rearStop]).toEqual([expected.frontStop, expected.rearStop])
    for (const limit of ['frontLimit', 'rearLimit'] as const) {
      expect(stance[limit].cause).toBe(expected[limit].cause)
      near(stance[limit].travel, expected[limit].travel, 1e-9)
    }
  })
})
