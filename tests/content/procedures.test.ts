import { describe, expect, test } from 'vitest'
import { stillNames } from '../../src/drawing/stills.ts'
import { captions } from '../../src/drawing/stills/captions.ts'
import { isCalculatorId, loadCalculator } from '../../src/calculators/index.ts'
import { units } from '../../src/units/units.ts'
import { entries, procedures } from './entries.ts'

const all = procedures()
const ids = all.map(({ id }) => id)
const covers = new Map(entries('cautions').map(({ id, data }) => [id, data['covers'] as string[]]))
const steps = all.flatMap((procedure) => procedure.steps.map((step) => ({ where: `${procedure.id} › ${step.id}`, procedure, step })))

describe('the chain of procedures', () => {
  test('follows next from the baseline through every procedure to the follow-up, in the order of the job', () => {
    const chain: string[] = []
    for (let at: string | undefined = 'record-a-baseline'; at && !chain.includes(at); ) {
      chain.push(at)
      const here: string = at
      at = all.find(({ id }) => id === here)?.next
    }
    expect(chain).toEqual(ids)
    expect(chain.slice(-2)).toEqual(['hand-it-over', 'look-again'])
  })
  test('skips only forward, to a procedure that the sentence names', () => {
    const wrong = all.filter(({ skip, skipTo, id }) => (skip === undefined) !== (skipTo === undefined) || (skipTo !== undefined && (ids.indexOf(skipTo) <= ids.indexOf(id) || !skip!.includes(skipTo))))
    expect(wrong.map(({ id }) => id)).toEqual([])
  })
})

describe('hazards', () => {
  test('each hazard of a step is answered by one of the cautions before that step', () => {
    const open = steps.flatMap(({ where, step }) => step.hazards.filter((hazard) => !step.cautions.some((id) => covers.get(id)?.includes(hazard))).map((hazard) => `${where}: ${hazard}`))
    expect(open).toEqual([])
  })
  test('a step without a hazard places no caution', () => {
    expect(steps.filter(({ step }) => step.hazards.length === 0 && step.cautions.length > 0).map(({ where }) => where)).toEqual([])
  })

  /* Words by which a step shows that it lifts, opens, releases or disconnects something. A step that uses one harmlessly is named with its reason. */
  const RISKY = [
    { says: /\b(jack|paddock stand|centre stand|lower the front|raise the (?:front|rear|bike)|lift the front|draw the axle|take the front wheel out)\b/i, of: ['falling', 'lifting'] },
    { says: /\b(unscrew the cap|unscrew it|slacken the (?:left|right|other)? ?cap|press the cap|press the spacer)\b/i, of: ['spring-force'] },
    { says: /\blet (?:out any|the) pressure\b/i, of: ['pressure'] },
    { says: /\b(unbolt (?:each|the) (?:brake )?caliper|calipers? off|free the brake hoses|refit the calipers?)\b/i, of: ['brakes'] },
    { says: /\bsqueeze the spring|squeeze further|wind the press back\b/i, of: ['spring-force'] },
    { says: /\bpour(?: in)?\b.*\boil\b|\bwork it until no more oil\b/i, of: ['oil'] },
  ]
  const HARMLESS: Readonly<Record<string, string>> = {
    'open-the-fork-top › free-the-hoses': 'the calipers already hang on their straps, one step before, and only clips are undone',
  }
  test.each(RISKY)('a step that says $says declares $of', ({ says, of }) => {
    const bare = steps.filter(({ where, step }) => says.test(step.do) && !step.hazards.some((hazard) => of.includes(hazard)) && !(where in HARMLESS))
    expect(bare.map(({ where, step }) => `${where}: ${step.do}`)).toEqual([])
    expect(steps.some(({ step }) => says.test(step.do))).toBe(true)
  })
})

describe('readings', () => {
  test('are declared once and taken in exactly one step', () => {
    const wrong = all.flatMap(({ id, readings = [], steps: own }) => {
      const taken = own.flatMap((step) => step.readings)
      const declared = readings.map((reading) => reading.id)
      const counts = declared.filter((name) => taken.filter((each) => each === name).length !== 1)
      return [...counts, ...taken.filter((name) => !declared.includes(name)), ...declared.filter((name, index) => declared.indexOf(name) !== index)].map((name) => `${id}: ${name}`)
    })
    expect(wrong).toEqual([])
  })
  test('have a unit that the site knows, and a range if they are numbers', () => {
    const wrong = all.flatMap(({ id, readings = [] }) => readings.filter(({ quantity, unit = '', range }) => (quantity !== 'text' && range === undefined) || !(unit in units || unit === 'km')).map((reading) => `${id}: ${reading.id}`))
    expect(wrong).toEqual([])
  })
  test('that go to a calculator fit a field of it', async () => {
    const wrong: string[] = []
    for (const { id, readings = [] } of all) {
      for (const reading of readings) {
        if (!reading.to) continue
        const { calculator, input } = reading.to
        const field = isCalculatorId(calculator) ? (loadCalculator(calculator)).inputs[input] : undefined
        const quantity = reading.unit === 'kg' && field?.kind === 'quantity' && field.unit === 'kg load' ? 'load' : units[reading.unit as keyof typeof units].quantity
        if (field?.kind !== 'quantity' || quantity !== field.quantity) wrong.push(`${id}: ${reading.id} → ${calculator}.${input}`)
      }
    }
    expect(wrong).toEqual([])
  })
  test('of one name mean one thing: same unit in every procedure', () => {
    const seen = new Map<string, string>()
    const wrong = all.flatMap(({ id, readings = [] }) => readings.filter((reading) => (seen.get(reading.id) ?? reading.unit ?? '') !== (seen.set(reading.id, seen.get(reading.id) ?? reading.unit ?? '').get(reading.id), reading.unit ?? '')).map((reading) => `${id}: ${reading.id}`))
    expect(wrong).toEqual([])
  })
})

describe('steps', () => {
  test('have ids of their own within a procedure, fit for an address', () => {
    const wrong = all.flatMap(({ id, steps: own }) => own.map((step) => step.id).filter((step, index, list) => list.indexOf(step) !== index || !/^[a-z][a-z0-9-]*$/.test(step)).map((step) => `${id}: ${step}`))
    expect(wrong).toEqual([])
  })
  test('name pictures that exist, each with a caption', () => {
    const named = [...new Set(steps.flatMap(({ step }) => (step.picture ? [step.picture] : [])))]
    expect(named.filter((name) => !stillNames.includes(name) || !captions[name])).toEqual([])
    expect(named.length).toBeGreaterThan(15)
  })
  test('are one action of at most thirty words', () => {
    expect(steps.filter(({ step }) => step.do.split(/\s+/).length > 30).map(({ where }) => where)).toEqual([])
  })
  test('name other procedures by ids that exist', () => {
    const looksLikeId = /\b(?:measure|choose|put|hand|record|inspect|count|support|weigh|open|swap|cut|set|refit|check|free|change|first|test)-(?:[a-z]+-)*[a-z]+\b/g
    const wrong = steps.flatMap(({ where, step }) => [...`${step.do} ${step.detail ?? ''}`.matchAll(looksLikeId)].map(([name]) => name).filter((name) => !ids.includes(name)).map((name) => `${where}: ${name}`))
    expect(wrong).toEqual([])
  })
})

test('every procedure says when to stop and hand over', () => {
  expect(all.filter(({ stop }) => !stop?.length || stop.some((text) => !/stop and hand over/.test(text))).map(({ id }) => id)).toEqual([])
})

describe('a fork leg', () => {
  test.each(['open-the-fork-top', 'swap-fork-springs', 'cut-a-spacer', 'set-oil-height', 'refit-and-set-adjusters', 'check-full-travel-clearance'])(
    'that is sealed, charged, in two chambers or air-sprung stops %s, with the caution that says how to tell',
    (id) => {
      const { stop, before = [], steps: own } = all.find((each) => each.id === id)!
      expect(stop).toContainEqual(expect.stringMatching(/sealed or charged cartridge, two chambers or an air spring.*stop and hand over/))
      expect([...before, ...own.flatMap(({ cautions }) => cautions)]).toContain('charged-fork-leg')
    },
  )
})

/* Steps whose order keeps a hand, an eye or a fork whole. Common practice, no source; the reason beside each. */
const ORDERS: readonly (readonly [string, string, readonly string[]])[] = [
  ['the kind is known and the pressure out before anything under load is loosened', 'open-the-fork-top', ['decide-on-the-kind', 'let-the-pressure-out', 'slacken-the-cap', 'unscrew-the-cap']],
  ['tight bolts are cracked while both wheels stand on the floor', 'open-the-fork-top', ['crack-the-wheel-bolts', 'crack-the-yoke-bolts', 'support-and-rock', 'take-the-wheel-out', 'rock-it-again', 'draw-the-leg']],
  ['the tube is held before the cap leaves it, and the rod before the spring lets it go', 'open-the-fork-top', ['ask-for-the-force', 'hold-the-tube', 'unscrew-the-cap', 'part-the-cap', 'hold-the-rod', 'draw-the-plate-out']],
  ['the needle is off its seat while the cap goes onto its rod', 'refit-and-set-adjusters', ['back-the-rebound-out', 'screw-the-cap-on', 'lock-the-cap', 'count-the-range', 'start-the-cap']],
  ['the brake works before the bike stands on its wheels, and the legs find their width before they are clamped', 'refit-and-set-adjusters', ['pump-the-brakes', 'spin-the-wheel', 'set-it-down', 'tighten-the-axle', 'bounce-the-fork', 'close-the-pinch-bolts']],
  ['the joints below are loose while the yokes are set, and closed last', 'free-a-binding-fork', ['loosen-the-axle-pinch', 'loosen-the-mudguard', 'loosen-the-upper-yoke', 'equalise', 'clamp-the-lower-yoke', 'bounce-once-more', 'clamp-the-axle', 'clamp-the-mudguard', 'read-the-last-band']],
  ['length and load can be read from outside before the guard is closed', 'test-a-spring', ['check-the-press', 'set-the-pointer', 'load-the-press', 'close-the-guard', 'squeeze-in-steps', 'let-it-off', 'open-the-guard']],
  ['nothing loose is left in a leg that is turned over, and warm oil is not read', 'set-oil-height', ['read-the-temperature', 'read-before', 'secure-the-inside', 'empty-the-leg', 'read-the-new-temperature', 'read-after']],
]
test.each(ORDERS)('%s: %s', (_, id, wanted) => {
  const own = all.find((each) => each.id === id)!.steps.map((step) => step.id)
  expect(own.filter((step) => wanted.includes(step))).toEqual(wanted)
})

test('a hazard that can cost an eye or a life, or fell bike or rider, is a WARNING', () => {
  const grave = /\b(eyes?|blind|kill|die|crash|fall)\b/i
  const mild = entries('cautions').filter(({ data }) => grave.test(data['consequence'] as string) && data['signal'] !== 'WARNING')
  expect(mild.map(({ id }) => id)).toEqual([])
})
