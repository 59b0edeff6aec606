import { describe, expect, test } from 'vitest'
import { applies, UNKNOWN } from '../../src/jobs/applies.ts'
import type { Answers, When } from '../../src/jobs/applies.ts'
import { laidOut, partsOf } from '../../src/jobs/job.ts'
import { wholeJob } from '../../src/jobs/whole.ts'
import type { Shared } from '../../src/jobs/whole.ts'
import type { JobPart, JobText } from '../../src/jobs/job.ts'
import { ask, condition, danger, job, signoff, stretch } from '../../src/jobs/schema.ts'
import type { AskText } from '../../src/jobs/schema.ts'
import { entries, listed, procedures } from './entries.ts'
import type { ProcedureText } from './entries.ts'

/* The job cards over their data, for every combination of answers. */

type Step = ProcedureText['steps'][number]
const asks = listed('asks.yaml').map((each) => ask.parse(each))
const lines = listed('dangers.yaml').map((each) => danger.parse(each))
const shared: Shared = {
  stretches: listed('stretches.yaml').map((each) => stretch.parse(each)),
  conditions: listed('conditions.yaml').map((each) => condition.parse(each)),
  signoffs: listed('signoffs.yaml').map((each) => signoff.parse(each)),
}
const texts = procedures()
const covers = new Map(entries('cautions').map(({ id, data }) => [id, data['covers'] as string[]]))
const jobs = entries('jobs').map(({ id, data }) => {
  const written = job.parse(data)
  return { id, text: wholeJob(written, shared), stops: written.stops, list: written.list, parts: written.parts }
})
const parts = new Map(jobs.map(({ id, text }) => [id, partsOf(text, texts, lines)]))
const everyStep = new Set(texts.flatMap(({ id, steps }) => steps.map((step) => `${id}/${step.id}`)))

/** All conditions that a card of this job hangs on. */
const whensOf = (text: JobText): (When | undefined)[] => {
  const taken = new Set(text.parts.flatMap(({ take }) => take.flatMap(({ of, steps }) => steps.map((step) => `${of}/${step}`))))
  return [...text.parts.map(({ when }) => when), ...text.rules.map(({ when }) => when), ...lines.flatMap(({ at }) => at.filter(({ step }) => taken.has(step)).map(({ when }) => when))]
}

/** Questions on which a condition of this job hangs: the others change no step. */
function decisive(text: JobText): AskText[] {
  const named = new Set(whensOf(text).flatMap((when) => Object.keys(when ?? {})))
  return asks.filter(({ id }) => text.asks.includes(id) && named.has(id))
}

/** A question's answers, one of those that mean the same to every condition; left open means the same as "I don't know". */
function distinct(text: JobText, ask: AskText): string[] {
  const whens = whensOf(text)
  const meaning = (answer: string): string => whens.map((when) => Number(applies(when && ask.id in when ? { [ask.id]: when[ask.id]! } : undefined, { [ask.id]: answer }))).join('')
  return [...new Map([UNKNOWN, ...ask.options.map(({ id }) => id)].map((answer) => [meaning(answer), answer])).values()]
}

/** Every combination of answers that can differ. */
function combinations(text: JobText): Answers[] {
  return decisive(text).reduce<Answers[]>((made, ask) => distinct(text, ask).flatMap((answer) => made.map((others) => ({ ...others, [ask.id]: answer }))), [{}])
}

const keysOf = (card: readonly JobPart<Step>[]): string[] => card.flatMap(({ steps }) => steps.map(({ key }) => key))

interface Card {
  card: JobPart<Step>[]
  keys: string[]
  answers: Answers
}

/** The cards that answers can make of a job, each once, and how many combinations were laid out. */
function cardsOf(id: string, text: JobText): { cards: Card[]; tried: number } {
  const made = new Map<string, Card>()
  const all = combinations(text)
  for (const answers of all) {
    const card = laidOut(parts.get(id)!, answers)
    const sight = card.map(({ text: part, steps }) => `${part.id}:${steps.map(({ key, dangers }) => key + dangers.map(({ when }) => Number(applies(when, answers))).join('')).join()}`).join()
    if (!made.has(sight)) made.set(sight, { card, keys: keysOf(card), answers })
  }
  return { cards: [...made.values()], tried: all.length }
}
const laid = new Map(jobs.map(({ id, text }) => [id, cardsOf(id, text)]))

/** Runs a check over every card of a job and gathers what is wrong, each fault once. */
const faults = (id: string, check: (card: Card) => string[]): string[] => [...new Set(laid.get(id)!.cards.flatMap(check))]

/* What must be so while a step is done: begun by one step, ended by another. Common practice of the trade, no source. */
interface State {
  what: string
  from: string
  until: string
  during: readonly string[]
}
const OPEN = 'open-the-fork-top/unscrew-the-cap'
const CLOSED = 'refit-and-set-adjusters/start-the-cap'
const STATES: readonly State[] = [
  { what: 'the front hangs on its supports for the readings', from: 'support-the-front/rock-it', until: 'support-the-front/let-it-down', during: ['support-the-front/check-the-head', 'support-the-front/spin-the-wheel', 'measure-front-sag/let-it-drop', 'measure-front-sag/read-extended'] },
  { what: 'the rear hangs on its supports', from: 'support-the-rear/rock-the-rear', until: 'support-the-rear/let-the-rear-down', during: ['measure-rear-sag/rock-the-rear-wheel', 'measure-rear-sag/lift-the-links', 'measure-rear-sag/read-hanging'] },
  { what: 'the front is supported while its parts are off', from: 'open-the-fork-top/support-and-rock', until: 'refit-and-set-adjusters/set-it-down', during: ['open-the-fork-top/hang-the-calipers', 'open-the-fork-top/take-the-wheel-out', 'open-the-fork-top/draw-the-leg', 'refit-and-set-adjusters/raise-the-leg', 'refit-and-set-adjusters/refit-the-wheel', 'refit-and-set-adjusters/pump-the-brakes'] },
  { what: 'the fork is open', from: OPEN, until: CLOSED, during: ['swap-fork-springs/lift-the-spacer', 'swap-fork-springs/draw-the-spring', 'swap-fork-springs/try-the-fit', 'check-full-travel-clearance/raise-the-wheel', 'cut-a-spacer/lower-the-spring', 'cut-a-spacer/try-the-stack', 'set-oil-height/collapse-the-leg', 'set-oil-height/draw-off-the-surplus', 'set-oil-height/read-after', 'refit-and-set-adjusters/set-the-washer'] },
  { what: 'eyes are covered', from: 'open-the-fork-top/put-glasses-on', until: 'refit-and-set-adjusters/pump-the-brakes', during: [OPEN, CLOSED, 'open-the-fork-top/slacken-the-cap', 'set-oil-height/collapse-the-leg'] },
  { what: 'the rod is held', from: 'open-the-fork-top/hold-the-rod', until: 'refit-and-set-adjusters/set-the-rod-depth', during: ['open-the-fork-top/draw-the-plate-out', 'refit-and-set-adjusters/draw-the-rod-up'] },
  { what: 'the calipers hang', from: 'open-the-fork-top/hang-the-calipers', until: 'refit-and-set-adjusters/refit-the-calipers', during: ['open-the-fork-top/take-the-wheel-out', 'refit-and-set-adjusters/refit-the-wheel'] },
  { what: 'the frame is held while its yokes are loose', from: 'change-ride-height/rock-it', until: 'change-ride-height/set-it-down', during: ['change-ride-height/loosen-the-upper-yoke', 'change-ride-height/loosen-the-lower-yoke', 'change-ride-height/slide-the-tubes', 'change-ride-height/let-the-tubes-down', 'change-ride-height/clamp-the-lower-yoke'] },
  { what: 'the rear hangs while its collar is turned', from: 'set-rear-preload/unload-the-rear', until: 'set-rear-preload/set-it-down', during: ['set-rear-preload/free-the-lock-ring', 'set-rear-preload/turn-one-turn', 'set-rear-preload/lock-the-collar'] },
  { what: 'the front hangs while its yokes are squared', from: 'free-a-binding-fork/support-the-front', until: 'free-a-binding-fork/set-it-down', during: ['free-a-binding-fork/loosen-the-upper-yoke', 'free-a-binding-fork/equalise', 'free-a-binding-fork/clamp-the-upper-yoke'] },
  { what: 'the guard is latched', from: 'test-a-spring/close-the-guard', until: 'test-a-spring/open-the-guard', during: ['test-a-spring/seat-the-ends', 'test-a-spring/squeeze-in-steps', 'test-a-spring/let-it-off'] },
  { what: 'stops and straps hold the raised bike', from: 'weigh-the-bike/stop-and-strap', until: 'weigh-the-bike/bring-it-down', during: ['weigh-the-bike/measure-the-lift', 'weigh-the-bike/read-it-raised'] },
]
const ORDERS: readonly (readonly [string, readonly string[]])[] = [
  ['the kind is known before anything is opened', ['open-the-fork-top/decide-on-the-kind', 'open-the-fork-top/let-the-pressure-out', 'open-the-fork-top/slacken-the-cap', OPEN]],
  ['before is read before anything is changed', ['record-a-baseline/read-the-marks', 'measure-front-sag/read-rider-up', 'open-the-fork-top/crack-the-wheel-bolts', 'measure-again/front-rider-up']],
  ['full travel is looked at while the springs are out', ['swap-fork-springs/draw-the-spring', 'check-full-travel-clearance/raise-the-wheel', 'check-full-travel-clearance/take-the-legs-out', CLOSED]],
  ['the brake is firm before the bike leaves its supports and before it rolls', ['refit-and-set-adjusters/refit-the-calipers', 'refit-and-set-adjusters/pump-the-brakes', 'refit-and-set-adjusters/set-it-down', 'first-ride-checks/pump-the-brakes', 'first-ride-checks/roll-and-stop', 'first-ride-checks/ride-at-walking-pace']],
  ['the axle is bounced before it is clamped', ['refit-and-set-adjusters/tighten-the-axle', 'refit-and-set-adjusters/bounce-the-fork', 'refit-and-set-adjusters/close-the-pinch-bolts', 'check-against-the-mark/read-the-left-mark']],
  ['a second person has looked before the first ride', ['first-ride-checks/second-person-checks', 'first-ride-checks/ride-at-walking-pace']],
  ['the gap is known before a tube is moved', ['check-full-travel-clearance/read-the-gap', 'change-ride-height/check-the-gap', 'change-ride-height/loosen-the-upper-yoke', 'change-ride-height/slide-the-tubes']],
  ['the same setting is ridden before and after the other', ['step-the-damping/sag-and-tyres-first', 'step-the-damping/ride-setting-a', 'step-the-damping/set-b', 'step-the-damping/ride-setting-b', 'step-the-damping/set-a-again', 'step-the-damping/ride-a-again', 'step-the-damping/judge-a-and-b']],
  ['the last change goes back first, and the mark proves it', ['put-everything-back/take-the-record', 'put-everything-back/tyres-back', 'put-everything-back/read-the-mark-again']],
]

const PAIRS = [
  [OPEN, CLOSED],
  ['open-the-fork-top/take-the-wheel-out', 'refit-and-set-adjusters/refit-the-wheel'],
  ['open-the-fork-top/hang-the-calipers', 'refit-and-set-adjusters/refit-the-calipers'],
  ['open-the-fork-top/free-the-speed-sensor', 'refit-and-set-adjusters/refit-the-sensor'],
  ['open-the-fork-top/part-the-cap', 'refit-and-set-adjusters/lock-the-cap'],
  ['open-the-fork-top/do-the-other-leg', 'refit-and-set-adjusters/close-the-other-leg'],
  ['support-the-rear/hold-the-front-wheel', 'support-the-rear/let-the-rear-down'],
  ['support-the-front/lift-slowly', 'support-the-front/let-it-down'],
  ['set-rear-preload/unload-the-rear', 'set-rear-preload/set-it-down'],
  ['set-rear-preload/free-the-lock-ring', 'set-rear-preload/lock-the-collar'],
  ['change-ride-height/carry-the-frame', 'change-ride-height/set-it-down'],
  ['change-ride-height/loosen-the-bars', 'change-ride-height/refit-the-bars'],
  ['change-ride-height/loosen-the-lower-yoke', 'change-ride-height/clamp-the-lower-yoke'],
  ['check-full-travel-clearance/hang-the-wheel', 'check-full-travel-clearance/set-it-down'],
  ['free-a-binding-fork/support-the-front', 'free-a-binding-fork/set-it-down'],
  ['free-a-binding-fork/loosen-the-axle-pinch', 'free-a-binding-fork/clamp-the-axle'],
  ['free-a-binding-fork/loosen-the-mudguard', 'free-a-binding-fork/clamp-the-mudguard'],
  ['weigh-the-bike/strap-the-ends', 'weigh-the-bike/free-the-suspension'],
  ['weigh-the-bike/stop-and-strap', 'weigh-the-bike/bring-it-down'],
] as const

const outOfOrder = (keys: readonly string[], wanted: readonly string[]): boolean => {
  const places = wanted.map((key) => keys.indexOf(key)).filter((place) => place >= 0)
  return places.some((place, index) => index > 0 && place < places[index - 1]!)
}

test('what holds for a step names a step that exists', () => {
  const named = [...shared.conditions.flatMap(({ steps }) => steps), ...shared.signoffs.map(({ id }) => id), ...lines.flatMap(({ at }) => at.map(({ step }) => step))]
  expect(named.filter((key) => !everyStep.has(key))).toEqual([])
  expect(lines.filter((line) => !covers.has(line.id)).map((line) => line.id)).toEqual([])
  expect(Object.keys(Object.fromEntries(covers)).filter((caution) => !lines.some((line) => line.id === caution))).toEqual([])
})

test('conditions name questions and answers that exist, and jobs take every stretch', () => {
  const whens = [...shared.conditions.map(({ when }) => when), ...jobs.flatMap(({ text }) => whensOf(text))]
  const wrong = whens.flatMap((when) => Object.entries(when ?? {}).flatMap(([ask, wanted]) => wanted.filter((answer) => !asks.find((each) => each.id === ask)?.options.some((option) => option.id === answer)).map((answer) => `${ask}: ${answer}`)))
  expect(wrong).toEqual([])
  const used = jobs.flatMap((each) => each.parts.map(({ use }) => use))
  expect(shared.stretches.filter(({ id }) => !used.includes(id)).map(({ id }) => id)).toEqual([])
})

test('the cards are those that people bring work for', () => {
  expect(jobs.map(({ id }) => id).sort()).toEqual(['damping-steps', 'find-the-rate', 'follow-up', 'fork-springs', 'free-the-fork', 'front-preload', 'oil', 'put-back', 'ride-height', 'set-sag', 'weigh'])
  // what is tried is what can differ: the main job alone has thousands of combinations
  expect(laid.get('fork-springs')!.tried).toBeGreaterThan(1000)
})

describe.each(jobs)('job $id', ({ id, text, stops }) => {
  const all = parts.get(id)!
  const every = all.flatMap(({ steps }) => steps)

  test('takes each step once, and asks what exists and what its parts hang on', () => {
    const keys = every.map(({ key }) => key)
    expect(keys.filter((key, index) => keys.indexOf(key) !== index)).toEqual([])
    expect(text.asks.filter((ask) => !asks.some((each) => each.id === ask))).toEqual([])
    expect(text.parts.flatMap(({ when }) => Object.keys(when ?? {})).filter((ask) => !text.asks.includes(ask))).toEqual([])
    const ids = text.parts.map((part) => part.id)
    expect(ids.filter((part, index) => ids.indexOf(part) !== index)).toEqual([])
  })

  test('each step that names a torque has a blank for it', () => {
    const torques = every.filter(({ step }) => /\btorques?\b/.test(step.do))
    expect(torques.filter(({ blanks }) => blanks.length === 0).map(({ key }) => key)).toEqual([])
    if (id === 'fork-springs') expect(torques.length).toBeGreaterThan(7)
  })

  test('every hazard of a step in sight has a line of danger in sight, whatever is answered', () => {
    const wrong = faults(id, ({ card, answers }) =>
      card.flatMap(({ steps }) =>
        steps.flatMap(({ key, step, dangers }) => {
          const told = dangers.filter(({ when }) => applies(when, answers)).map(({ caution }) => caution)
          return step.hazards.filter((hazard) => !told.some((caution) => covers.get(caution)?.includes(hazard))).map((hazard) => `${key}: ${hazard}`)
        }),
      ),
    )
    expect(wrong).toEqual([])
  })

  test('supports, glasses and open legs are there while a step needs them, whatever is answered', () => {
    const wrong = faults(id, ({ keys }) =>
      STATES.flatMap(({ what, from, until, during }) =>
        during.flatMap((key) => {
          const at = keys.indexOf(key)
          if (at < 0) return []
          const [begin, end] = [keys.indexOf(from), keys.indexOf(until)]
          return begin >= 0 && begin < at && end > at ? [] : [`${key}: not while ${what}`]
        }),
      ),
    )
    expect(wrong).toEqual([])
  })

  test.each(ORDERS)('%s', (_, wanted) => {
    expect(faults(id, ({ keys }) => (outOfOrder(keys, wanted) ? [wanted.join(', ')] : []))).toEqual([])
  })

  test('what is opened is closed, and what is taken off is put back', () => {
    expect(faults(id, ({ keys }) => PAIRS.filter(([off, on]) => keys.includes(off) !== keys.includes(on)).map(([off, on]) => `${off} without ${on}`))).toEqual([])
  })

  test('no part in sight is empty', () => {
    expect(faults(id, ({ card }) => card.filter(({ steps, text: part }) => steps.length === 0 && !part.gate && !part.order).map(({ text: part }) => part.id))).toEqual([])
  })

  test('an answer that stops the job says what to do instead, and leaves nothing that opens the fork', () => {
    const answers = Object.entries(stops).flatMap(([ask, byAnswer]) => Object.entries(byAnswer).map(([answer, says]) => ({ ask, answer, says })))
    expect(answers.filter(({ ask, answer, says }) => !text.asks.includes(ask) || !asks.find((each) => each.id === ask)?.options.some((option) => option.id === answer) || says.length < 60)).toEqual([])
    for (const { ask, answer } of answers) {
      const keys = keysOf(laidOut(all, { [ask]: answer }))
      expect(keys.filter((key) => /^(open-the-fork-top\/(?!find|look|decide)|swap-fork|cut-a|set-oil|refit)/.test(key)), `${ask}: ${answer}`).toEqual([])
      expect(keys.length).toBeGreaterThan(2)
    }
    if (text.asks.includes('fork')) expect(Object.keys(stops['fork']!)).toEqual(['closed', 'air'])
    if (text.asks.includes('support') && id !== 'weigh') expect(stops['support']).toBeDefined()
  })

  test('without an answer, or with “I don’t know” everywhere, every step stays', () => {
    const unsure = Object.fromEntries(asks.map((ask) => [ask.id, UNKNOWN]))
    expect(keysOf(laidOut(all, {}))).toEqual(every.map(({ key }) => key))
    expect(keysOf(laidOut(all, unsure))).toEqual(every.map(({ key }) => key))
  })

  test('every gate says when to go on and what else to do, and a gate id stands once', () => {
    const gates = all.flatMap(({ text: part }) => (part.gate ? [part.gate] : []))
    expect(gates.filter(({ go, not, sign }) => go.length < 20 || not.length < 20 || sign.length === 0).map((gate) => gate.id)).toEqual([])
    expect(gates.length).toBeGreaterThan(0)
    expect(new Set(gates.map((gate) => gate.id)).size).toBe(gates.length)
    if (id === 'fork-springs') expect(gates.map((gate) => gate.id)).toEqual(['agree', 'decide', 'wait', 'compare', 'sign', 'hand-over'])
  })
})
