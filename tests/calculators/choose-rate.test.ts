import { describe, expect, test } from 'vitest'
import ChooseRateFigure from '../../components/figures/ChooseRate.tsx'
import { candidatesOf, SHARE_DOUBT } from '../../src/calculators/choose-rate.band.ts'
import { LITTLE_IN_HAND } from '../../src/calculators/choose-rate.remarks.ts'
import chooseRate from '../../src/calculators/choose-rate.ts'
import type { Cell, Given } from '../../src/calculators/define.ts'
import { evaluate } from '../../src/calculators/evaluate.ts'
import { ends } from '../../src/calculators/interval.ts'
import { asDefinition, bikes, drawn, expectNear, expectSound, remarksOf, result, ROUNDING, shown } from './evaluated.ts'

const tableOf = (given: Given = {}): readonly (readonly Cell[])[] => shown(chooseRate, given).now.output.rows as readonly (readonly Cell[])[]
const column = (rows: readonly (readonly Cell[])[], place: number): number[] => rows.map((row) => Number(row[place]))
const problemsOf = (given: Given): Readonly<Record<string, string>> => evaluate(asDefinition(chooseRate), given, { bikes }).problems

describe('choose-rate', () => {
  test('choose-rate gives every rate the spring force that the sag wanted needs', () => {
    // the load at that sag is one and the same, so 2 × rate × (preload + sag) must be equal for all rates
    const forces = tableOf({ riderSag: 36 }).map(([rate, preload]) => 2 * Number(rate) * (Number(preload) + 0.036))
    for (const force of forces) expectNear(force, forces[0]!, 1e-6)
  })

  test('choose-rate needs more preload, and leaves less static sag, the softer the spring', () => {
    const rows = tableOf()
    const [preload, staticSag] = [column(rows, 1), column(rows, 2)]
    expect(preload).toEqual([...preload].sort((a, b) => b - a))
    expect(staticSag).toEqual([...staticSag].sort((a, b) => a - b))
    expect(remarksOf(chooseRate)).toMatch(/softer spring has the smaller static sag/)
  })

  test('choose-rate says where the band ends only because the rates on offer do', () => {
    // with the default wishes 9.5 to 11.5 N/mm miss nothing, and 8 to 9 N/mm leave too little in hand
    const offered = (...rates: number[]): string => remarksOf(chooseRate, { rates: rates.map((rate) => [rate]) })
    expect(offered(9, 10, 11)).toMatch(/ends at 11\.0 N\/mm only because the rates on offer do: a stiffer one may do as well/)
    expect(offered(10, 10.5, 11)).toMatch(/covers all the rates on offer/)
    expect(offered(10, 20)).toMatch(/starts at 10\.0 N\/mm only because the rates on offer do: a softer one may do as well/)
    expect(offered(8, 10, 20)).not.toMatch(/on offer/)
  })

  test('choose-rate sorts the rates that were typed', () => expect(column(tableOf({ rates: [[10], [8], [9]] }), 0)).toEqual([8000, 9000, 10_000]))

  test('choose-rate moves the load by five points of the rider along the fork', () => {
    // by hand: 0.05 × 80 kg × 9.80665 × cos of the settled rake (24.7° to 25°) = 35.5 to 35.7 N
    expectNear(SHARE_DOUBT, 0.05, 0)
    const moved = (result(chooseRate, {}, 'spread') / 100) * result(chooseRate, {}, 'forkLoad')
    expectNear(moved, 35.6, 0.2)
  })

  test('choose-rate gives intervals where the rider’s share is not known', () => {
    const { now } = shown(chooseRate, { riderShare: '?' })
    const [low, high] = ends(now.output.front as never)!
    // ten points of 80 kg are 8 kg; the bike tips forward a little with them, which adds some 0.5 kg
    expectNear((high - low) / 9.80665, 8.4, 0.4)
    // what the share does not touch stays a plain number
    expect(typeof (now.output.rows as Cell[][])[0]?.[0]).toBe('number')
  })

  test('choose-rate says where the rider sits is a guess unless it was given', () => {
    expect(remarksOf(chooseRate)).toMatch(/is a guess here\. Five points of share/)
    expect(remarksOf(chooseRate, { riderShare: '?' })).toMatch(/is a guess here/)
    expect(remarksOf(chooseRate, { riderShare: 46 })).toMatch(/measure both sags/)
  })

  test('choose-rate never promises: it warns below 10 mm in hand and calls more no promise', () => {
    expectNear(LITTLE_IN_HAND, 0.01, ROUNDING)
    expect(remarksOf(chooseRate, { reserve: 5 })).toMatch(/can use that up/)
    expect(remarksOf(chooseRate, { reserve: 12 })).toMatch(/no promise/)
    for (const reserve of [0, 5, 12]) expect(remarksOf(chooseRate, { reserve })).not.toMatch(/won’t bottom|will not bottom/)
  })

  test('choose-rate has no band where each rate misses something, and says which way to look', () => {
    expect(shown(chooseRate, { rates: [[5], [5.5]] }).now.output.candidates).toBeNull()
    expect(remarksOf(chooseRate, { rates: [[5], [5.5]] })).toMatch(/stiffer than 5\.5 N\/mm/)
    expect(remarksOf(chooseRate, { rates: [[14], [15]] })).toMatch(/softer than 14\.0 N\/mm/)
  })

  test('candidatesOf spans the rates that miss nothing', () => {
    const rows = [
      { rate: 8, misses: ['reserve below the target' as const] },
      { rate: 9, misses: [] },
      { rate: 10, misses: [] },
    ]
    expect(candidatesOf(rows)).toEqual({ low: 9, high: 10 })
    expect(candidatesOf(rows.slice(0, 1))).toBeNull()
  })

  test('choose-rate leaves spring travel minus preload and fork travel before the coils touch', () => {
    for (const [, preload, , , , , bind] of tableOf({ stroke: 150 })) expectNear(bind, 0.15 - 0.12 - Number(preload), ROUNDING)
    expect(String(tableOf({ stroke: 130 })[0]?.at(-1))).toMatch(/coil bind/)
  })

  test('choose-rate refuses a window upside down and a sag past the travel, at the field', () => {
    expect(problemsOf({ staticLow: 30, staticHigh: 20 }).staticHigh).toMatch(/must not be below/)
    expect(problemsOf({ dampingLow: 0.5 }).dampingHigh).toMatch(/must not be below/)
    expect(problemsOf({ stroke: 60, riderSag: 60 }).stroke).toMatch(/more than the sag wanted/)
  })
})

describe('ChooseRateFigure', () => {
  test('ChooseRateFigure draws one strip a spring, those that fit marked', () => {
    const markup = drawn(chooseRate, ChooseRateFigure)
    expectSound(markup)
    expect(markup.match(/class="strip/g)?.length).toBeGreaterThanOrEqual(8)
    const fitting = tableOf().filter((row) => row.at(-1) === 'none').length
    expect(markup.match(/class="strip fits"/g)).toHaveLength(fitting)
  })

  test('ChooseRateFigure places the rider’s bar by the sag', () => {
    // the bar runs from 66 to 312 units over 120 mm of travel: 36 mm lie at 66 + 246 × 0.3 = 139.8
    expect(drawn(chooseRate, ChooseRateFigure, { riderSag: 36 })).toMatch(/class="mark" x1="139\.8"/)
  })

  test('ChooseRateFigure draws every bike, with nothing that fits too', () => {
    for (const bike of Object.keys(bikes)) expectSound(drawn(chooseRate, ChooseRateFigure, { bike, riderMass: 180 }, { bike, riderMass: 40 }, true))
  })
})
