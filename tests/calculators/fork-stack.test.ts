import { loadCalculator } from '../../src/calculators/index.ts'
import { describe, expect, test } from 'vitest'
import ForkStackFigure from '../../src/calculators/fork-stack/Figure.tsx'
import { layoutFork } from '../../src/drawing/forkLayout.ts'
import type { Cell } from '../../src/machine/cells.ts'
import { evaluate } from '../../src/machine/evaluate.ts'
import {
  asDefinition,
  bikes,
  drawn,
  expectNear,
  expectSound,
  remarksOf,
  result,
  ROUNDING,
  shown,
} from './evaluated.ts'

const forkStack = loadCalculator('fork-stack')

describe('fork-stack', () => {
  test('fork-stack turns take their pitch from ISO 261', () => {
    // ISO 261: M14 × 1.5 has a pitch of 1.5 mm; exact but for rounding
    expectNear(result(forkStack, { turnsIn: 4, thread: 'M14x1.5' }, 'screw'), 6, ROUNDING)
    expectNear(
      result(forkStack, { turnsIn: 4, thread: 'measured', pitch: 0.9 }, 'screw'),
      3.6,
      ROUNDING,
    )
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
    expectNear(
      result(forkStack, { turnsIn: 7 }, 'fullTravelForce') -
        result(forkStack, { turnsIn: 0 }, 'fullTravelForce'),
      126,
      ROUNDING,
    )
  })

  test('fork-stack lists every setting to the end of the range', () => {
    const rows = shown(forkStack, { range: 15, thread: 'M20x1', step: 4 }).now.output
      .settings as number[][]
    expect(rows.map(([turns]) => turns)).toEqual([0, 4, 8, 12, 15])
    expectNear(rows.at(-1)?.[1], 0.023, ROUNDING)
  })

  test('fork-stack tells a loose spring as a result', () => {
    expect(remarksOf(forkStack, { springLength: 305 })).toMatch(/hangs loose by 15\.0 mm/)
    expect(result(forkStack, { springLength: 305 }, 'capForce')).toBe(0)
  })

  test('fork-stack warns of a cap that jumps from 20 N on', () => {
    // 9 N/mm × 2 mm = 18 N and × 2.5 mm = 22.5 N
    expect(remarksOf(forkStack, { spacerLength: 112, wanted: 2 })).not.toMatch(/pushes each cap/)
    expect(remarksOf(forkStack, { spacerLength: 112.5, wanted: 2 })).toMatch(/pushes each cap/)
    // and of one that would, with the preload wanted: 9 N/mm × 60 mm
    expect(remarksOf(forkStack, { spacerLength: 112, wanted: 60 })).toMatch(
      /pushes each cap with 18 N, and with the preload wanted it would push with 540 N/,
    )
  })

  test('fork-stack limits the travel where coils touch less than 3 mm beyond the stop', () => {
    // free 335, preload 15, travel 120: the coils have 335 − 15 − 120 = 200 mm left at full travel
    expectNear(result(forkStack, { solidLength: 198 }, 'bindMargin'), 2, ROUNDING)
    expect(remarksOf(forkStack, { solidLength: 198 })).toMatch(/Only 2\.0 mm of spring travel/)
    expect(remarksOf(forkStack, { solidLength: 196 })).not.toMatch(/spring travel is left/)
    expect(remarksOf(forkStack, { solidLength: 210 })).toMatch(/coils touch 10\.0 mm before/)
  })

  test('fork-stack’s table rises with the turns: more turns lift the front against this setting, fewer lower it', () => {
    const rows = shown(forkStack, { turnsIn: 7, step: 1 }).now.output.settings as number[][]
    const rise = (turns: number): number => rows.find(([at]) => at === turns)![2]!
    expectNear(rise(7), 0, ROUNDING)
    // a turn of 1 mm lifts by 1 mm less the tenth that the gas takes
    expectNear(rise(15), 0.008 * 0.9, 0.0005)
    expectNear(rise(0), -0.007 * 0.9, 0.0005)
  })

  test('fork-stack tells a cut only once coils, top stop and size of the new preload are looked at', () => {
    const told = (given: Record<string, number>) => remarksOf(forkStack, given)
    // free 335, solid 190: 145 mm can be squeezed, 120 of them are travel; 10 mm wanted of the 15 there are
    expect(told({ solidLength: 190, wanted: 10 })).toMatch(
      /cut 5\.0 mm off the spacer, to 120\.0 mm/,
    )
    expect(told({ solidLength: 190, wanted: 20 })).toMatch(
      /takes a spacer of 130\.0 mm, 5\.0 mm longer/,
    )
    // 60 mm and 120 mm of travel are 45 mm more than a spring that closes after 135 mm has
    expect(told({ solidLength: 200, wanted: 60 })).toMatch(
      /Cut nothing for 60\.0 mm of preload: the coils would touch 45\.0 mm before/,
    )
    expect(told({ solidLength: 192, wanted: 21 })).toMatch(
      /only 2\.0 mm of spring travel would be left/,
    )
    // nobody knows when the coils touch: say what has to be found out; with less preload than now it does not matter
    expect(told({ wanted: 20 })).toMatch(/find out whether the spring can be squeezed by 140 mm/)
    expect(told({ wanted: 10 })).toMatch(/cut 5\.0 mm off/)
    // 25 N/mm with 30 mm carries 1500 N, more than the bike alone puts on the fork
    expect(told({ rate: 25, wanted: 30, solidLength: 100 })).toMatch(
      /the bike alone would not sink off its top stop/,
    )
    const refused: Record<string, number>[] = [
      { solidLength: 200, wanted: 60 },
      { wanted: 20 },
      { rate: 25, wanted: 30, solidLength: 100 },
    ]
    for (const given of refused) expect(told(given)).not.toMatch(/Cut both legs alike/)
  })

  test('fork-stack has a word for a stack that cannot be, and one that nobody builds', () => {
    // 80 mm of spring where spacer, washer, cap and screw already fill 150 mm
    expect(
      evaluate(asDefinition(forkStack), { springLength: 80, tubeDepth: 150 }, { bikes }).problems
        .tubeDepth,
    ).toMatch(/no room at all left for the spring/)
    const long = remarksOf(forkStack, { springLength: 400 })
    expect(long).toMatch(/squeezed by 80\.0 mm with the wheel hanging, which is 20 % of its length/)
    expect(long).toMatch(/cut nothing by these figures/)
    expect(long).not.toMatch(/Cut both legs alike/)
    // on the top stop no height is told, which no preload changes there
    const high = remarksOf(forkStack, { spacerLength: 160 })
    expect(high).toMatch(/does not push the fork off its top stop/)
    expect(high).not.toMatch(/higher|lower/)
  })

  test('fork-stack still lists a setting that presses the coils solid', () => {
    const { now } = shown(forkStack, { solidLength: 325 })
    expect(now.output.frontTravel).toBeNull()
    expect((now.output.settings as string[][]).at(-1)?.[3]).toBe('solid')
  })

  test('fork-stack refuses turns past the end of the range at that field', () => {
    const { problems } = evaluate(asDefinition(forkStack), { turnsIn: 20 }, { bikes })
    expect(problems.turnsIn).toMatch(/range ends after 15 turns/)
    // the last turn is still one
    expect(
      evaluate(asDefinition(forkStack), { turnsIn: 15 }, { bikes }).problems.turnsIn,
    ).toBeUndefined()
  })

  test('fork-stack refuses coils that touch at or beyond the free length', () => {
    for (const solidLength of [335, 340]) {
      const { problems } = evaluate(
        asDefinition(forkStack),
        { springLength: 335, solidLength },
        { bikes },
      )
      expect(problems.solidLength).toMatch(/less than the free length/)
    }
  })

  test('fork-stack tells each setting loose, held or solid, and a height where the coils hold', () => {
    const rows = (given: Record<string, number>): readonly (readonly Cell[])[] =>
      shown(forkStack, given).now.output.settings as readonly (readonly Cell[])[]
    // 125 mm of spacer give 8 mm of preload fully out; 12 mm less leave the spring loose by 4, and held again from the fifth turn
    expect(rows({ spacerLength: 113 }).map((row) => row[3])).toEqual([
      ...['loose', 'loose', 'loose', 'loose'],
      ...Array.from({ length: 12 }, () => 'held'),
    ])
    // 335 mm of spring that touch at 323.5 can be pressed by 11.5: from the fourth turn, 12 mm of preload, they cannot
    const bound = rows({ solidLength: 323.5, turnsIn: 2 })
    expect(bound.map((row) => row[3])).toEqual([
      ...['held', 'held', 'held', 'held'],
      ...Array.from({ length: 12 }, () => 'solid'),
    ])
    expect(bound.map((row) => row[2] === null)).toEqual(bound.map((row) => row[3] === 'solid'))
    // where the present setting is solid, no row has a height to be compared with
    expect(rows({ solidLength: 323.5, turnsIn: 7 }).map((row) => row[2])).toEqual(
      bound.map(() => null),
    )
  })

  test('fork-stack has no force at full travel where the coils touch before it', () => {
    // 335 − 15 of preload − 120 of travel: coils that touch at 200 just allow it
    expect(shown(forkStack, { solidLength: 199 }).now.output.fullTravelForce).toBeGreaterThan(2430)
    expect(shown(forkStack, { solidLength: 201 }).now.output.fullTravelForce).toBeNull()
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
    expect([spacer?.from, spacer?.to, washers[0]?.to, spring?.from, spring?.to]).toEqual([
      0.031,
      0.156,
      0.158,
      expect.closeTo(0.158, 12),
      0.478,
    ])
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
    // each name with its length on one line; the state before is drawn first
    const texts = [...metric.matchAll(/<text[^>]*>([^<]*)</g)].map(([, text]) => text)
    expect(texts.join(' | ')).toContain(
      'preload 15.0\u00a0mm | now | spacer 125.0\u00a0mm | spring 320.0\u00a0mm',
    )
    for (const text of ['depth 478.0\u00a0mm', 'before', 'now']) expect(texts).toContain(text)
    expect(drawn(forkStack, ForkStackFigure, {}, null, true)).toContain('0.591\u00a0in')
  })

  test('ForkStackFigure draws every bike and every end of the ranges', () => {
    for (const bike of Object.keys(bikes))
      expectSound(
        drawn(forkStack, ForkStackFigure, {
          bike,
          springLength: 700,
          spacerLength: 0,
          capReach: -40,
        }),
      )
  })
})
