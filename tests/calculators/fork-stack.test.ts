import { describe, expect, test } from 'vitest'
import ForkStackFigure from '../../components/figures/ForkStack.tsx'
import { layoutFork } from '../../components/figures/kit/forkLayout.ts'
import forkStack from '../../src/calculators/fork-stack.ts'
import { evaluate } from '../../src/calculators/evaluate.ts'
import { asDefinition, bikes, drawn, expectNear, expectSound, remarksOf, result, ROUNDING, shown } from './evaluated.ts'

describe('fork-stack', () => {
  test('fork-stack turns take their pitch from ISO 261', () => {
    // ISO 261: M14 × 1.5 has a pitch of 1.5 mm; exact but for rounding
    expectNear(result(forkStack, { turnsIn: 4, thread: 'M14x1.5' }, 'screw'), 6, ROUNDING)
    expectNear(result(forkStack, { turnsIn: 4, thread: 'measured', pitch: 0.9 }, 'screw'), 3.6, ROUNDING)
  })

  test('fork-stack raises the front by a little less than the preload, since the gas pushes less higher up', () => {
    const { now, before } = shown(forkStack, { turnsIn: 15 })
    const rise = Number(before?.output.frontTravel) - Number(now.output.frontTravel)
    // 15 mm of preload; the gas takes about a tenth. 0.5 mm covers the curve of the gas.
    expect(rise).toBeGreaterThan(0.0125)
    expect(rise).toBeLessThan(0.015)
  })

  test('fork-stack adds rate × preload at full travel for both legs', () => {
    // 2 × 9 N/mm × 7 mm = 126 N, worked by hand; the gas at full travel is the same
    expectNear(result(forkStack, { turnsIn: 7 }, 'fullTravelForce') - result(forkStack, { turnsIn: 0 }, 'fullTravelForce'), 126, ROUNDING)
  })

  test('fork-stack lists every setting to the end of the range', () => {
    const rows = shown(forkStack, { range: 15, thread: 'M20x1', step: 4 }).now.output.settings as number[][]
    expect(rows.map(([turns]) => turns)).toEqual([0, 4, 8, 12, 15])
    expectNear(rows.at(-1)?.[1], 0.023, ROUNDING)
  })

  test('fork-stack tells a loose spring as a result', () => {
    expect(remarksOf(forkStack, { springLength: 305 })).toMatch(/hangs loose by 15\.0 mm/)
    expect(result(forkStack, { springLength: 305 }, 'capForce')).toBe(0)
  })

  test('fork-stack warns of a cap that jumps from 20 N on', () => {
    // 9 N/mm × 2 mm = 18 N and × 2.5 mm = 22.5 N
    expect(remarksOf(forkStack, { spacerLength: 112 })).not.toMatch(/pushes each cap/)
    expect(remarksOf(forkStack, { spacerLength: 112.5 })).toMatch(/pushes each cap/)
  })

  test('fork-stack limits the travel where coils touch less than 3 mm beyond the stop', () => {
    // free 335, preload 15, travel 120: the coils have 335 − 15 − 120 = 200 mm left at full travel
    expectNear(result(forkStack, { solidLength: 198 }, 'bindMargin'), 2, ROUNDING)
    expect(remarksOf(forkStack, { solidLength: 198 })).toMatch(/Only 2\.0 mm of spring travel/)
    expect(remarksOf(forkStack, { solidLength: 196 })).not.toMatch(/spring travel is left/)
    expect(remarksOf(forkStack, { solidLength: 210 })).toMatch(/coils touch 10\.0 mm before/)
  })

  test('fork-stack still lists a setting that presses the coils solid', () => {
    const { now } = shown(forkStack, { solidLength: 325 })
    expect(now.output.frontTravel).toBeNull()
    expect((now.output.settings as string[][]).at(-1)?.[3]).toBe('coils touch')
  })

  test('fork-stack refuses turns past the end of the range at that field', () => {
    const { problems } = evaluate(asDefinition(forkStack), { turnsIn: 20 }, { bikes })
    expect(problems.turnsIn).toMatch(/range ends after 15 turns/)
  })
})

describe('ForkStackFigure', () => {
  const leg = {
    tubeDiameter: 0.043,
    boreDiameter: 0.038,
    tubeDepth: 0.478,
    travel: 0.12,
    capReach: 0.031,
    washers: [0.002],
    spacerLength: 0.125,
    spring: { freeLength: 0.335 },
  }

  test('layoutFork stacks spacer, washer and spring from the cap down to the seat', () => {
    const { spacer, washers, spring, seat, gap } = layoutFork(leg)
    expect([spacer?.from, spacer?.to, washers[0]?.to, spring?.from, spring?.to]).toEqual([0.031, 0.156, 0.158, expect.closeTo(0.158, 12), 0.478])
    expect(seat).toBe(0.478)
    expectNear(gap, 0, ROUNDING)
  })

  test('layoutFork leaves the gap of a loose spring above it', () => {
    expectNear(layoutFork({ ...leg, spring: { freeLength: 0.305 } }).gap, 0.015, ROUNDING)
  })

  test('layoutFork lifts seat and lower tube by the travel used', () => {
    const [extended, used] = [layoutFork(leg), layoutFork({ ...leg, used: 0.04 })]
    expectNear(extended.seat - used.seat, 0.04, ROUNDING)
    expectNear(extended.lower.to - used.lower.to, 0.04, ROUNDING)
    expect(used.upper).toEqual(extended.upper)
  })

  test('ForkStackFigure writes preload, spacer and depth in the reader’s units', () => {
    const metric = drawn(forkStack, ForkStackFigure)
    expectSound(metric)
    for (const text of ['preload 15.0\u00a0mm', 'spacer 125.0\u00a0mm', '478.0\u00a0mm', 'before', 'now']) expect(metric).toContain(text)
    expect(drawn(forkStack, ForkStackFigure, {}, null, true)).toContain('0.591\u00a0in')
  })

  test('ForkStackFigure draws every bike and every end of the ranges', () => {
    for (const bike of Object.keys(bikes)) expectSound(drawn(forkStack, ForkStackFigure, { bike, springLength: 700, spacerLength: 0, capReach: -40 }))
  })
})
