import fc from 'fast-check'
import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { calculatorIds, loadCalculator } from '../../src/calculators/index.ts'
import { defaultsOf } from '../../src/machine/evaluate.ts'
import type { Given } from '../../src/machine/given.ts'
import { decodeLink } from '../../src/machine/link.ts'
import { encodeLink } from '../../src/machine/writeLink.ts'
import { IMPERIAL, METRIC, unitOptions } from '../../src/units/choice.ts'
import type { UnitChoice } from '../../src/units/choice.ts'
import { unitsOfLink } from '../../src/units/linkUnits.ts'
import { bikes } from './bikes.ts'

const ids = Object.keys(bikes)
const sag = loadCalculator('sag')
const usual = defaultsOf(sag)
const read = (query: string) => decodeLink(sag, `?${query}`, ids)

describe('encodeLink', () => {
  test('leaves out what is at its usual value', () => {
    const query = new URLSearchParams(encodeLink(sag, { ...usual, settledUp: 119.5 }))
    expect([...query.keys()]).toEqual(['v', 'sum', 'settledUp'])
  })

  test('writes what the reader set, be it the usual value', () => {
    const query = encodeLink(sag, usual, null, { named: ['settledUp'] })
    expect(new URLSearchParams(query).get('settledUp')).toBe(String(usual['settledUp']))
  })

  test('keeps a state before whose every value is the usual one', () => {
    const now = { ...usual, settledUp: 119.5 }
    expect(read(encodeLink(sag, now, usual)).held).toEqual(usual)
    expect(read(encodeLink(sag, now)).held).toBeNull()
  })

  test('writes the sender’s units, and no metric ones', () => {
    const own: UnitChoice = { ...METRIC, rate: 'lbf/in', mass: 'st' }
    for (const choice of [METRIC, IMPERIAL, own]) {
      const query = encodeLink(sag, usual, null, { choice })
      expect(read(query).problems).toEqual([])
      expect(unitsOfLink(query)?.choice ?? METRIC).toEqual(choice)
    }
    expect(encodeLink(sag, usual)).not.toContain('units')
  })
})

test('every choice of units comes back from a link', () => {
  const choice = fc.record(
    Object.fromEntries(
      Object.entries(unitOptions).map(([quantity, options]) => [
        quantity,
        fc.constantFrom(...options),
      ]),
    ),
  ) as unknown as fc.Arbitrary<UnitChoice>
  fc.assert(
    fc.property(choice, (units) => {
      const query = encodeLink(sag, usual, null, { choice: units })
      expect(unitsOfLink(query)?.choice ?? METRIC).toEqual(units)
    }),
  )
})

test('units that the site does not have are named, and metric ones shown', () => {
  const { problems } = read('v=1&units=cubits,lb')
  expect(problems).toHaveLength(1)
  expect(problems[0]).toContain('“cubits”')
  expect(unitsOfLink('?units=cubits,lb')!.choice).toEqual({ ...METRIC, mass: 'lb' })
})

/* A link leaves out usual values and trusts its version to say what they were: a default that changes needs a new version. */
describe('the usual values of a version stay', () => {
  const recorded = JSON.parse(
    readFileSync('tests/calculators/data/usualValues.json', 'utf8'),
  ) as Readonly<Record<string, { version: number; usual: Given }>>
  test.each(calculatorIds)('%s', (id) => {
    const calculator = loadCalculator(id)
    const kept = recorded[id]
    expect(kept, `${id} is new: add its version and usual values to usualValues.json`).toBeDefined()
    expect(
      { version: calculator.version, usual: JSON.parse(JSON.stringify(defaultsOf(calculator))) },
      `${id}: links leave out usual values. Raise \`version\`, say in \`earlier\` what they were, and write the new ones down here`,
    ).toEqual(kept)
  })
})

/** What mail programs, messengers, hands and copying do to a link. */
const MANGLINGS: readonly ((link: string, at: number, other: string) => string)[] = [
  (link, at) => link.slice(0, at),
  (link, at) => link.slice(0, at) + link.slice(at + 1),
  (link, at, other) => link.slice(0, at) + other + link.slice(at + 1),
  (link, at, other) => link.slice(0, at) + other + link.slice(at),
  (link, at) => link.slice(0, at) + link.slice(at + 1, at + 2) + link[at] + link.slice(at + 2),
  (link) => `${link}.`,
  (link) => `${link})`,
  (link) => link.replaceAll('&', '&amp;'),
  (link) => link.replaceAll('.', ','),
  (link) => link.replaceAll(':', '%3A').replaceAll(';', '%3B'),
  (link) => encodeURIComponent(link),
  (link) => link.toUpperCase(),
  (link) => link.split('&').reverse().join('&'),
  (link, at) => `${link}&${link.slice(0, at)}`,
  (link) => link.replace(/&[^&]*$/, ''),
  (link, at) =>
    link
      .split('&')
      .toSpliced(1 + (at % 8), 1)
      .join('&'),
]

describe('a link that was mangled on its way', () => {
  const links = calculatorIds.map(loadCalculator).map((calculator) => {
    const given = Object.fromEntries(
      Object.entries(calculator.inputs).flatMap(([id, input]) =>
        input.kind === 'quantity' && input.default !== undefined
          ? [[id, input.range[0] + 3 * input.step] as const]
          : [],
      ),
    )
    const sent = { ...defaultsOf(calculator), ...given }
    return { calculator, sent, link: encodeLink(calculator, sent) }
  })

  // One seed, since one mangling in 46,656 has the same sum by chance.
  test('never shows anything but what was sent without saying so (2,000 of them)', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...links),
        fc.constantFrom(...MANGLINGS),
        fc.nat(),
        fc.constantFrom(...'0123456789.=&;:%+?ae- '),
        ({ calculator, link }, mangle, place, other) => {
          const was = decodeLink(calculator, link, ids)
          const now = decodeLink(calculator, mangle(link, place % link.length, other), ids)
          const same =
            JSON.stringify([was.given, was.held]) === JSON.stringify([now.given, now.held])
          const nothing = JSON.stringify(now.given) === JSON.stringify(defaultsOf(calculator))
          // a link of which nothing is left opens the example, which is marked as one
          expect(same || nothing || now.problems.length > 0).toBe(true)
        },
      ),
      { numRuns: 2000, seed: 20261127 },
    )
  })
})
