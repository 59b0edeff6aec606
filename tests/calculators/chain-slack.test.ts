import { loadCalculator } from '../../src/calculators/index.ts'
import { describe, expect, test } from 'vitest'
import ChainSlackFigure from '../../src/calculators/chain-slack/Figure.tsx'
import type { Given } from '../../src/machine/given.ts'
import { evaluate } from '../../src/machine/evaluate.ts'
import { ends } from '../../src/units/interval.ts'
import { asDefinition, bikes, drawn, expectNear, remarksOf, result, shown } from './evaluated.ts'

const chainSlack = loadCalculator('chain-slack')

const stands = (given: Given): unknown => shown(chainSlack, given).now.output.stands
const problemAt = (given: Given): Readonly<Record<string, string>> =>
  evaluate(asDefinition(chainSlack), given, { bikes }).problems

describe('chain-slack', () => {
  test('chain-slack reads after a raise what the same chain reads that much nearer to hanging', () => {
    // raised by 10 mm, 20 mm of sag is the place where 10 mm of travel was used before
    const raised = result(chainSlack, { raise: 10, at: 20 }, 'slackNow')
    expectNear(raised, 37.7, 0.05) // by a second program with its own tangents and wraps
    expect(result(chainSlack, { raise: -10, at: 20 }, 'slackNow')).toBeLessThan(35)
    expectNear(result(chainSlack, { raise: 0, slack: 42 }, 'slackNow'), 42, 1e-6)
  })

  test('chain-slack leaves 31 mm of 35 in line, and finds 16 mm the least: by a second program', () => {
    expectNear(result(chainSlack, { raise: 0 }, 'tightest'), 30.89, 0.005)
    expectNear(result(chainSlack, { raise: 0 }, 'tightestAt'), 52.08, 0.005)
    expectNear(result(chainSlack, { raise: 0 }, 'least'), 16.45, 0.005)
    expectNear(result(chainSlack, { raise: 0 }, 'full'), 50.38, 0.005)
    expectNear(result(chainSlack, { raise: 0 }, 'hanging'), 40.87, 0.005)
    expectNear(result(chainSlack, {}, 'least'), 21.6, 0.005)
  })

  test('chain-slack says tight, may be tight and slack by the least reading and its ±', () => {
    const at = (slack: number, readingPlusMinus = 0): unknown =>
      stands({ raise: 0, slack, readingPlusMinus })
    expect(at(16)).toBe('tight')
    expect(at(17)).toBe('slack')
    expect(at(17, 3)).toBe('may-tighten')
    expect(at(20, 3)).toBe('slack')
    expect(at(13, 3)).toBe('tight')
  })

  test('chain-slack warns of the gearbox bearing and of fingers, and sends to the maker’s figure', () => {
    const tight = remarksOf(chainSlack, { raise: 0, slack: 10 })
    expect(tight).toMatch(/no slack left/)
    expect(tight).toMatch(/gearbox’s output bearing/)
    expect(tight).toMatch(/more than 16 mm/)
    expect(remarksOf(chainSlack, { raise: 0 })).not.toMatch(/gearbox/)
    for (const slack of [10, 35]) {
      expect(remarksOf(chainSlack, { slack })).toMatch(/never by the chain/)
      expect(remarksOf(chainSlack, { slack })).toMatch(/figure to set is the maker’s/)
    }
  })

  test('chain-slack says where: in line, at an end, or at a travel when the lengths are not known', () => {
    expect(remarksOf(chainSlack, {})).toMatch(
      /at 62 mm of travel used, where sprocket, pivot and axle are in one line/,
    )
    expect(remarksOf(chainSlack, { axleBelow: -20, raise: 0 })).toMatch(
      /tightest with the wheel hanging/,
    )
    expect(remarksOf(chainSlack, { axleBelow: 220, raise: 0 })).toMatch(/tightest at full travel/)
    expect(remarksOf(chainSlack, { axleBelow: 'unknown', raise: 0 })).toMatch(
      /at 22 to 82 mm of travel used/,
    )
  })

  test('chain-slack widens to a range with the drive not known, and never gets a verdict that it cannot have', () => {
    const open = {
      axleBelow: 'unknown',
      sprocketAhead: 'unknown',
      sprocketAbove: 'unknown',
      raise: 0,
    }
    const [low, high] = ends(shown(chainSlack, open).now.output.tightest)!
    expect(high - low).toBeGreaterThan(0.008)
    expect(remarksOf(chainSlack, { ...open, slack: 20 })).toMatch(/may be left there/)
  })

  test('chain-slack refuses teeth in parts, a travel past the full one and an arm that does not reach, each at its field', () => {
    expect(problemAt({ frontTeeth: 16.5 })).toHaveProperty('frontTeeth')
    expect(problemAt({ rearTeeth: 44.5 })).toHaveProperty('rearTeeth')
    expect(problemAt({ at: 200 })).toHaveProperty('at')
    expect(problemAt({ armLength: 350, axleBelow: -50, travel: 350, raise: 0 })).toHaveProperty(
      'armLength',
    )
    const close = { armLength: 350, axleBelow: 250, raise: 40, pitch: 'threeQuarters' }
    const behind = { sprocketAhead: -40, sprocketAbove: -80, frontTeeth: 25, rearTeeth: 65 }
    expect(problemAt({ ...close, ...behind })['armLength']).toMatch(/sprockets overlap/)
  })

  test('ChainSlackFigure draws both states, with the reading as a point and the drive to scale', () => {
    const markup = drawn(chainSlack, ChainSlackFigure).replaceAll('\u00a0', ' ')
    expect(markup).toMatch(/slack at mid-run/)
    expect(markup).toMatch(/reading now: 38 mm at 20 mm of travel used/)
    expect(markup).toMatch(/thin: hanging, bold: tightest/)
    expect(markup).not.toMatch(/NaN|undefined/)
  })
})
