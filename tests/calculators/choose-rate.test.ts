import { loadCalculator } from '../../src/calculators/index.ts'
import { describe, expect, test } from 'vitest'
import ChooseRateFigure from '../../src/calculators/choose-rate/Figure.tsx'
import { candidatesOf, SHARE_DOUBT } from '../../src/calculators/choose-rate/band.ts'
import { BUMP_ON_BRAKES, ROOM_ENOUGH } from '../../src/calculators/thresholds.ts'
import { codesOf } from '../../src/machine/cells.ts'
import type { Cell } from '../../src/machine/cells.ts'
import type { Given } from '../../src/machine/given.ts'
import { evaluate } from '../../src/machine/evaluate.ts'
import { ends } from '../../src/units/interval.ts'
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

const chooseRate = loadCalculator('choose-rate')

const tableOf = (given: Given = {}): readonly (readonly Cell[])[] =>
  shown(chooseRate, given).now.output.rows as readonly (readonly Cell[])[]
const column = (rows: readonly (readonly Cell[])[], place: number): number[] =>
  rows.map((row) => Number(row[place]))
const problemsOf = (given: Given): Readonly<Record<string, string>> =>
  evaluate(asDefinition(chooseRate), given, { bikes }).problems

/** What a link of the first edition means by what it leaves out: a floor only, and a sag of its own. */
const FIRST_EDITION: Given = { ...chooseRate.earlier?.[1]?.given }

describe('choose-rate', () => {
  test('choose-rate gives every rate the spring force that the sag wanted needs', () => {
    // the load at that sag is one and the same, so 2 × rate × (preload + sag) must be equal for all rates
    const forces = tableOf({ riderSag: 36 }).map(
      ([rate, preload]) => 2 * Number(rate) * (Number(preload) + 0.036),
    )
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
    // with a floor of 5 mm and no ceiling 9.5 to 11.5 N/mm miss nothing, and 8 to 9 N/mm leave too little in hand
    const offered = (...rates: number[]): string =>
      remarksOf(chooseRate, { ...FIRST_EDITION, rates: rates.map((rate) => [rate]) })
    expect(offered(9, 10, 11)).toMatch(
      /ends at 11\.0 N\/mm only because the rates on offer do: a stiffer one may do as well/,
    )
    expect(offered(10, 10.5, 11)).toMatch(/covers all the rates on offer/)
    expect(offered(10, 20)).toMatch(
      /starts at 10\.0 N\/mm only because the rates on offer do: a softer one may do as well/,
    )
    expect(offered(8, 10, 20)).not.toMatch(/on offer/)
  })

  test('choose-rate sorts the rates that were typed', () =>
    expect(column(tableOf({ rates: [[10], [8], [9]] }), 0)).toEqual([8000, 9000, 10_000]))

  test('choose-rate moves the load by five points of the rider along the fork', () => {
    // by hand: 0.05 × 80 kg × 9.80665 × cos of the settled rake (24.7° to 25°) = 35.5 to 35.7 N
    expectNear(SHARE_DOUBT, 0.05, 0)
    const moved = (result(chooseRate, {}, 'spread') / 100) * result(chooseRate, {}, 'forkLoad')
    expectNear(moved, 35.6, 0.2)
  })

  test('choose-rate gives intervals where the rider’s share is not known', () => {
    const { now } = shown(chooseRate, { riderShare: 'unknown' })
    const [low, high] = ends(now.output.front)!
    // ten points of 80 kg are 8 kg; the bike tips forward a little with them, which adds some 0.5 kg
    expectNear((high - low) / 9.80665, 8.4, 0.4)
    // what the share does not touch stays a plain number
    expect(typeof (now.output.rows as Cell[][])[0]?.[0]).toBe('number')
  })

  test('choose-rate says that the rider’s place hardly moves the rates, and what does', () => {
    // finer shelf: ten points of share move the softest that passes by a tenth or two, a tenth of g by more than a newton per millimetre
    const rates = [90, 92, 94, 96, 98, 100, 102, 104].map((rate) => [rate / 10])
    const softest = (given: Given): number =>
      ends(shown(chooseRate, { ...FIRST_EDITION, rates, ...given }).now.output.candidates)![0] / 1e3
    expect(softest({ riderShare: 51 }) - softest({ riderShare: 41 })).toBeLessThanOrEqual(
      0.2 + ROUNDING,
    )
    const more = [85, 90, 95, 100, 105, 110, 115].map((rate) => [rate / 10])
    expect(
      softest({ rates: more, deceleration: 0.75 }) - softest({ rates: more, deceleration: 0.65 }),
    ).toBeGreaterThan(1)
    expect(remarksOf(chooseRate)).toMatch(
      /hard braking decides that band, though hardly the rate that leaves as much: at 0\.65 g the softest that passes is 8\.0 N\/mm, and at 0\.75 g .* 9\.5 N\/mm/,
    )
    const guessed: Given[] = [{}, { riderShare: 'unknown' }]
    for (const given of guessed)
      expect(remarksOf(chooseRate, given)).toMatch(
        /it hardly moves these rates. Five points of share/,
      )
    expect(remarksOf(chooseRate, { riderShare: 46 })).not.toMatch(/Five points of share/)
    for (const given of [...guessed, { riderShare: 46 }])
      expect(remarksOf(chooseRate, given)).not.toMatch(/of the rate/)
  })

  test('choose-rate’s softest for a tenth of g less and more is what the card gives there', () => {
    const softest = (deceleration: number) =>
      ends(shown(chooseRate, { deceleration }).now.output.candidates)?.[0]
    const { output } = shown(chooseRate).now
    expect([output.gentler, output.harder]).toEqual([softest(0.65), softest(0.75)])
  })

  test('choose-rate names bad rows of its shelf, leaves them out and computes the rest', () => {
    const given = { rates: [[9.5], [0.95], [10], [50]] }
    const evaluation = evaluate(asDefinition(chooseRate), given, { bikes })
    expect(evaluation.problems.rates).toMatch(
      /row 2: rate must be between 3 and 20.*; row 4: .*left out/,
    )
    expect(evaluation.now?.output).toEqual(shown(chooseRate, { rates: [[9.5], [10]] }).now.output)
  })

  test('choose-rate never promises: it warns below 10 mm in hand and calls more no promise', () => {
    expectNear(BUMP_ON_BRAKES, 0.01, ROUNDING)
    expectNear(ROOM_ENOUGH, 0.015, ROUNDING)
    expect(remarksOf(chooseRate, { reserve: 5 })).toMatch(/can use that up/)
    expect(remarksOf(chooseRate, { reserve: 12 })).toMatch(
      /That is room for a bump, and no promise/,
    )
    for (const reserve of [0, 5, 12])
      expect(remarksOf(chooseRate, { reserve })).not.toMatch(/won’t bottom|will not bottom/)
  })

  test('choose-rate has no band where each rate misses something, and says which way to look', () => {
    expect(shown(chooseRate, { rates: [[5], [5.5]] }).now.output.candidates).toBeNull()
    expect(remarksOf(chooseRate, { rates: [[5], [5.5]] })).toMatch(/stiffer than 5\.5 N\/mm/)
    expect(remarksOf(chooseRate, { rates: [[14], [15]] })).toMatch(/softer than 14\.0 N\/mm/)
  })

  test('choose-rate compares with what is fitted first: the rate that leaves the new rider as much', () => {
    // the same rider needs the same spring, and no more oil
    const same = shown(chooseRate).now.output
    expectNear(same.sameRate, 9000, 0.1)
    expectNear(same.oilInstead, 0, 1e-6)
    for (const riderMass of [60, 95, 120]) {
      const { output } = shown(chooseRate, { riderMass }).now
      const [wanted] = ends(output.inHand)!
      // fed back as the only spring on the shelf, it leaves what the fitted one leaves the rider whom it suits
      const [row] = tableOf({ riderMass, rates: [[Number(output.sameRate) / 1e3]] })
      expectNear(ends(row![5])![0], wanted, 1e-8)
      // what the fitted one leaves its own rider does not hang on who asks
      expectNear(wanted, ends(same.inHand)![0], ROUNDING)
    }
  })

  test('choose-rate’s like for like hardly hangs on how hard is hard', () => {
    const rateAt = (deceleration: number): number =>
      result(chooseRate, { riderMass: 100, deceleration }, 'sameRate')
    // from a firm stop to a hard one the band moves by more than a newton per millimetre, this by less than a tenth
    expectNear(rateAt(0.6), rateAt(0.8), 0.1)
  })

  test('choose-rate tells a ceiling as well as a floor', () => {
    const missesOf = (rate: number, given: Given = {}): string =>
      codesOf(tableOf({ ...given, rates: [[rate]] })[0]!.at(-1)).join()
    expect(missesOf(9)).toBe('')
    expect(missesOf(11.5)).toBe('unused little-preload')
    expect(missesOf(11.5, { unused: 17, leastPreload: 0 })).toBe('')
    expect(missesOf(11, { stiffest: 2.5 })).toBe('stiff')
    expect(remarksOf(chooseRate, { rates: [[12]] })).toMatch(/Try softer than 12\.0 N\/mm/)
  })

  test('choose-rate gives the ride frequency of slope and mass', () => {
    // by hand: two springs of 9 N/mm and about 1.7 N/mm of air on 974 N along the fork, 25° raked: √(19.7e3/(974/9.81))/2π·(1 to 2 % for the rake) = 2.24 to 2.45
    const [row] = tableOf({ rates: [[9]] })
    expectNear(Number(row![7]) / (2 * Math.PI), 2.35, 0.1)
  })

  test('choose-rate’s picture says nothing of rates that it does not name', () => {
    const nothingKnown = { from: 'own', riderMass: 95 }
    expect(shown(chooseRate, nothingKnown).now.output.rows).toEqual([])
    expect(drawn(chooseRate, ChooseRateFigure, nothingKnown)).not.toMatch(/None of these/)
  })

  test('choose-rate names no rate for a bike of which neither rate nor sags are known', () => {
    const { output } = shown(chooseRate, { from: 'own' }).now
    for (const id of ['sameRate', 'candidates', 'inHand', 'fittedRate', 'harder'])
      expect(output[id], id).toBeNull()
    expect(output.rows).toEqual([])
    const words = remarksOf(chooseRate, { from: 'own', riderMass: 95 })
    expect(words).toMatch(/^No rate is named/)
    expect(words).toMatch(/Measure two lengths first/)
    expect(words).not.toMatch(/N\/mm/)
    // one sag is not enough
    expect(shown(chooseRate, { from: 'own', riderNow: 38 }).now.output.sameRate).toBeNull()
  })

  test('choose-rate finds the fitted springs from two sags, with their ±', () => {
    const invented = shown(chooseRate).now.output
    const given: Given = {
      from: 'own',
      staticNow: Number(tableOf({ rates: [[9]] })[0]![2]) * 1e3,
      riderNow: Number(invented.sagWanted) * 1e3,
    }
    const { output } = shown(chooseRate, given).now
    // the roadster's own sags give back its own 9 N/mm and 15 mm, to the rounding of a search
    expectNear((output.fittedRate as { value: number }).value, 9000, 1e-3)
    expectNear(output.fittedPreload, 0.015, 1e-8)
    // by hand: ±1 mm each, anywhere equally likely, is 0.577 mm; of both √2 × 0.577 = 0.816 mm in 16.5 mm, at 1.96 9.7 % of the rate with its air, 9.8 N/mm
    const [low, high] = ends(output.fittedRate)!
    expectNear((high - low) / 2, 0.097 * 9800, 60)
    expect(remarksOf(chooseRate, given)).toMatch(
      /The fitted rate comes from the two sags, each within ±1\.0 mm\. So the rate that leaves this rider as much may be 8\.\d to 9\.\d|10\.\d N\/mm/,
    )
  })

  test('choose-rate says what an own bike borrows, and where rate and sags disagree', () => {
    const given: Given = { from: 'own', fittedRate: 6, staticNow: 18.7, riderNow: 35.2 }
    expect(remarksOf(chooseRate, given)).toMatch(/Something of it is wrong/)
    expect(remarksOf(chooseRate, given)).toMatch(/are those of “Middleweight roadster/)
    expect(remarksOf(chooseRate, { from: 'own', fittedRate: 9 })).toMatch(/No sag was read/)
    expect(remarksOf(chooseRate)).not.toMatch(/are those of/)
  })

  test('choose-rate brakes as hard as a cable tie says, and lets the fitted springs reach just that', () => {
    const { output } = shown(chooseRate, { deepest: 112 }).now
    // the least in hand of the fitted springs is what the tie left of 120 mm of travel
    expectNear(ends(output.inHandNow)![0], 8e-3, 1e-8)
    expect(Number(output.hardness)).toBeLessThan(0.7 * 9.80665)
    expect(remarksOf(chooseRate, { deepest: 112 })).toMatch(
      /The tie at 112 mm is what a quick stop at 0\.\d\d g/,
    )
    expect(remarksOf(chooseRate, { deepest: 120 })).toMatch(/stands at the end of the travel/)
    expect(problemsOf({ deepest: 20 }).deepest).toMatch(/No braking takes these springs/)
    expect(problemsOf({ deepest: 130 }).deepest).toMatch(/further than the fork’s full travel/)
  })

  test('choose-rate gives oil its size beside a step of rate', () => {
    const { output } = shown(chooseRate, { riderMass: 100 }).now
    const rise = Number(output.oilInstead)
    expect(rise).toBeGreaterThan(0.02)
    // a rise of 10 mm does less than half of what 25 mm do
    expect(Number(output.oilTen) / 0.01).toBeLessThan(
      (ends(output.inHand)![0] - ends(tableOf({ riderMass: 100, rates: [[9]] })[0]![5])![0]) / rise,
    )
    expect(remarksOf(chooseRate, { riderMass: 100 })).toMatch(/Oil is the other means: 10 mm more/)
    expect(remarksOf(chooseRate, { riderMass: 180, deceleration: 0.4 })).toMatch(
      /Oil alone does not|would have to rise/,
    )
  })

  test('choose-rate takes any number of rates up to forty', () => {
    const rates = Array.from({ length: 40 }, (_, place) => [7 + place / 10])
    expect(tableOf({ rates })).toHaveLength(40)
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
    for (const [, preload, , , , , bind] of tableOf({ stroke: 150 }))
      expectNear(bind, 0.15 - 0.12 - Number(preload), ROUNDING)
    expect(JSON.stringify(tableOf({ stroke: 130 })[0]?.at(-1))).toMatch(/coil-bind/)
  })

  test('choose-rate refuses a window upside down and a sag past the travel, at the field', () => {
    expect(problemsOf({ staticLow: 30, staticHigh: 20 }).staticHigh).toMatch(
      /must not end below where it begins/,
    )
    expect(problemsOf({ dampingLow: 0.5 }).dampingHigh).toMatch(/must not be below the lowest/)
    expect(problemsOf({ stroke: 60, riderSag: 60 }).stroke).toMatch(/further than the sag wanted/)
  })
})

describe('ChooseRateFigure', () => {
  test('ChooseRateFigure draws one strip a spring, those that fit marked', () => {
    const markup = drawn(chooseRate, ChooseRateFigure)
    expectSound(markup)
    expect(markup.match(/class="strip/g)?.length).toBeGreaterThanOrEqual(8)
    const fitting = tableOf().filter((row) => row.at(-1) === '').length
    expect(markup.match(/class="spring-bar fits"/g)).toHaveLength(fitting)
  })

  test('ChooseRateFigure places the rider’s bar by the sag', () => {
    // the bar runs from 60 to 308 units over 120 mm of travel: 36 mm lie at 60 + 248 × 0.3 = 134.4
    expect(drawn(chooseRate, ChooseRateFigure, { riderSag: 36 })).toMatch(/class="mark" x1="134.4"/)
  })

  test('ChooseRateFigure draws every bike, with nothing that fits too', () => {
    for (const bike of Object.keys(bikes))
      expectSound(
        drawn(
          chooseRate,
          ChooseRateFigure,
          { bike, riderMass: 180 },
          { bike, riderMass: 40 },
          true,
        ),
      )
  })
})
