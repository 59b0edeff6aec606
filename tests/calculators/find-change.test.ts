import { parseHTML } from 'linkedom'
import { describe, expect, test } from 'vitest'
import { loadCalculator } from '../../src/calculators/index.ts'
import FindChangeFigure from '../../src/calculators/find-change/Figure.tsx'
import { changeBike, MEANS, solveStance } from '../../src/core/index.ts'
import type { BikeChange, MeanId } from '../../src/core/index.ts'
import { aboard } from '../../src/bikes/aboard.ts'
import { bikeOf } from '../../src/bikes/bikes.ts'
import type { Given } from '../../src/machine/given.ts'
import { evaluate } from '../../src/machine/evaluate.ts'
import { asDefinition, bikes, drawn, expectNear, expectSound, remarksOf } from './evaluated.ts'
import { specs } from './bikes.ts'

const findChange = loadCalculator('find-change')

interface Way {
  change: BikeChange
  aims: Record<string, { is: number; low: number; high: number }>
}

/** The ways as a program reads them off the drawing. */
function waysOf(given: Given): Way[] {
  const { document } = parseHTML(drawn(findChange, FindChangeFigure, given))
  const si = (node: Element, name = 'data-si'): number => Number(node.getAttribute(name))
  return [...document.querySelectorAll('[data-way]')].map((way) => ({
    change: Object.fromEntries(
      [...way.querySelectorAll('[data-change]')].map((node) => [
        node.getAttribute('data-change') as MeanId,
        si(node),
      ]),
    ),
    aims: Object.fromEntries(
      [...way.querySelectorAll('[data-aim]')].map((node) => [
        node.getAttribute('data-aim'),
        { is: si(node), low: si(node, 'data-si-low'), high: si(node, 'data-si-high') },
      ]),
    ),
  }))
}

const ALL: Given = { allowed: 'parts' }
const spec = specs['middleweight-roadster']!

describe('find-change', () => {
  test('find-change’s ways, each made on the bike and solved alone, read what they say', () => {
    const bike = bikeOf(spec)
    const load = { payload: aboard(spec, { rider: 95 }) }
    const now = solveStance(bike, load)
    const ways = waysOf(ALL)
    expect(ways.length).toBeGreaterThanOrEqual(3)
    for (const { change, aims } of ways) {
      const after = solveStance(changeBike(bike, change, now.rearTravel), load)
      // a hundredth of a millimetre
      expectNear(aims.frontRiderSag!.is, after.frontTravel, 1e-5)
      expectNear(aims.rearRiderSag!.is, after.rearTravel, 1e-5)
      expectNear(aims.trail!.is, after.trail, 1e-5)
      expectNear(aims.trail!.high, now.trail + 1e-3, 1e-9)
      for (const { is, low, high } of Object.values(aims)) {
        expect(is).toBeGreaterThanOrEqual(low)
        expect(is).toBeLessThanOrEqual(high)
      }
    }
  })

  test('find-change tells different ways, what is nothing to open before springs to buy', () => {
    const sets = waysOf(ALL).map(({ change }) => Object.keys(change).join(' '))
    expect(new Set(sets).size).toBe(sets.length)
    expect(sets[0]).not.toMatch(/Rate/)
    expect(sets.some((set) => set.includes('forkRate'))).toBe(true)
    const markup = drawn(findChange, FindChangeFigure, ALL)
    expect(markup.indexOf('nothing opened')).toBeLessThan(markup.indexOf('springs to buy'))
  })

  test('find-change changes only what is allowed', () => {
    const allowed: Record<string, readonly string[]> = {
      adjusters: ['forkPreloadChange', 'rearPreloadChange'],
      tubes: ['forkPreloadChange', 'rearPreloadChange', 'tubeRaise'],
      oil: ['forkPreloadChange', 'rearPreloadChange', 'tubeRaise', 'oilHeightChange'],
      parts: MEANS,
    }
    for (const [level, means] of Object.entries(allowed))
      for (const { change } of waysOf({ allowed: level }))
        for (const mean of Object.keys(change)) expect(means).toContain(mean)
  })

  test('find-change marks where nothing meets every aim, and tells the nearest with what it misses', () => {
    const given = { frontRiderLow: 5, frontRiderHigh: 6, allowed: 'adjusters' }
    const markup = drawn(findChange, FindChangeFigure, given)
    expect(markup).toMatch(/data-none/)
    expect(markup).toMatch(/data-way="1" data-nearest/)
    expect(markup).toMatch(/The nearest/)
    expect(markup).toMatch(/ over, <\/b>wanted/)
    expect(remarksOf(findChange, given)).toMatch(/No change that is allowed meets every aim/)
    expect(drawn(findChange, FindChangeFigure, ALL)).not.toMatch(/data-none/)
  })

  test('find-change counts turns where the pitch is known, and calls a spacer a spacer', () => {
    const given = {
      rider: 80,
      frontRiderLow: 25,
      frontRiderHigh: 26.2,
      rearRiderLow: 0,
      trailWithin: 20,
    }
    const free = { ...given, rearRiderHigh: 120, allowed: 'adjusters' }
    expect(drawn(findChange, FindChangeFigure, free)).not.toMatch(/turn/)
    // 10 mm at 1 mm a turn
    expect(drawn(findChange, FindChangeFigure, { ...free, forkPitch: 1 })).toMatch(
      /Wind the fork preload in <b>10 turns \(10\.0.mm\)/,
    )
    const inside = drawn(findChange, FindChangeFigure, {
      ...free,
      forkAdjuster: 'inside',
      forkPitch: 1,
    })
    expect(inside).toMatch(/Fit fork spacers, longer by/)
    expect(inside).toMatch(/the fork is opened/)
    expect(inside).not.toMatch(/turn/)
  })

  test('find-change cautions by what its first way does', () => {
    const up = { rider: 80, frontRiderLow: 34, frontRiderHigh: 36.5, trailWithin: 1 }
    expect(
      remarksOf(findChange, { ...up, rearRiderLow: 20, rearRiderHigh: 30, trailWithin: 20 }),
    ).toMatch(/chain’s slack/)
    expect(remarksOf(findChange, ALL)).toMatch(/small|maker’s manual/)
    const there = { rider: 80, frontRiderLow: 34, frontRiderHigh: 36 }
    expect(remarksOf(findChange, there)).toMatch(/meets every aim as it stands/)
  })

  test('find-change tells a danger at the change that has it, in every way', () => {
    const { document } = parseHTML(drawn(findChange, FindChangeFigure, ALL))
    const opened = [...document.querySelectorAll('[data-change=forkRate]')]
    expect(opened.length).toBeGreaterThan(0)
    for (const change of opened) expect(change.textContent).toMatch(/cap is under spring force/)
    for (const change of document.querySelectorAll('[data-change=rearRate]'))
      expect(change.textContent).toMatch(/workshop with a press/)
  })

  test('find-change refuses a window upside down, at its field', () => {
    const { problems } = evaluate(
      asDefinition(findChange),
      { frontRiderLow: 40, frontRiderHigh: 30 },
      { bikes },
    )
    expect(problems.frontRiderHigh).toMatch(/must not end below where it begins/)
  })

  test('FindChangeFigure draws every bike at ends of its ranges', () => {
    const ends: Given[] = [{ rider: 0 }, { rider: 160 }, { trailWithin: 0.2, reserve: 40 }]
    for (const bike of Object.keys(bikes))
      for (const given of ends)
        expectSound(drawn(findChange, FindChangeFigure, { bike, ...given }, null, true))
  })
})
