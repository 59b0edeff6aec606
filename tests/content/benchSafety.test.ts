import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { loadCalculator } from '../../src/calculators/index.ts'
import { result } from '../calculators/evaluated.ts'
import { entries, listed, procedures } from './entries.ts'

/* What hurts if a page says it the wrong way round, or leaves it out. Common practice of the trade, no source. */

const all = procedures()
const cautions = entries('cautions')
const covers = new Map(cautions.map(({ id, data }) => [id, data['covers'] as string[]]))
const steps = all.flatMap(({ id, steps: own }) =>
  own.map((step) => ({ where: `${id} › ${step.id}`, procedure: id, step })),
)
const procedure = (id: string) => all.find((each) => each.id === id)!
const placesOf = (id: string): string[] => procedure(id).steps.map((step) => step.id)
const textOf = (id: string, step: string): string => {
  const { do: action, detail = '' } = procedure(id).steps.find((each) => each.id === step)!
  return `${action} ${detail}`
}
const bodyOf = (id: string): string => cautions.find((each) => each.id === id)!.body

/** Every sentence of the site's words, with where it stands. */
const sentences = ['chapters', 'procedures', 'cautions', 'calculators', 'handouts', 'lessons']
  .flatMap((folder) =>
    entries(folder).map(({ id, data, body }) => ({
      where: `${folder}/${id}`,
      text: `${JSON.stringify(data).replaceAll('"', '. ')}. ${body}`,
    })),
  )
  .concat(
    ['symptoms.yaml', 'dangers.yaml', 'glossary.yaml'].map((file) => ({
      where: file,
      text: JSON.stringify(listed(file)).replaceAll('"', '. '),
    })),
  )
  .flatMap(({ where, text }) =>
    text.split(/(?<=[.!?:])\s+|\n+/).map((sentence) => ({ where, sentence })),
  )

describe('a support picture', () => {
  const HUNG: Readonly<Record<string, readonly string[]>> = {
    'front-hung-for-sag': ['measure-front-sag'],
    'front-hung-for-fork-work': [
      'open-the-fork-top',
      'free-a-binding-fork',
      'change-ride-height',
      'check-full-travel-clearance',
    ],
    'rear-hung-by-the-frame': ['measure-rear-sag', 'set-rear-preload', 'measure-motion-ratio'],
  }
  test.each(Object.entries(HUNG))('%s is that of each work that needs it', (picture, ids) => {
    for (const id of ids) {
      const shown = procedure(id).steps.flatMap((step) => step.picture ?? [])
      expect(shown, id).toContain(picture)
      // and the wheel that must hang is shown on no other support
      const others = Object.keys(HUNG).filter((each) => each !== picture)
      const same = picture.split('-')[0]!
      expect(
        shown.filter((each) => others.includes(each) && each.startsWith(same)),
        id,
      ).toEqual([])
    }
  })
})

describe('oil height', () => {
  test('read extended or poured on old oil overfills, and read with the spring in underfills', () => {
    const caution = bodyOf('overfilled-fork-locks')
    expect(caution).toMatch(/Read with the leg pulled out: far too much oil/)
    expect(caution).toMatch(/Old oil left in when a volume is poured: too much/)
    expect(caution).toMatch(/Read with the spring in: too little.*at 130 \+ 35 = 165 mm/)
    const chapter = entries('chapters').find(({ id }) => id === 'air-and-oil-height')!.body
    expect(chapter).toMatch(/The usual way to get there is to read the height with the leg extended/)
    expect(chapter).toMatch(/A spring left in where the manual means it out errs the other way/)
    const way = procedures().find(({ id }) => id === 'set-oil-height')!
    expect(JSON.stringify(way.steps)).toMatch(/set while it is pulled out ends up far too full/)
    // 40 cm³ of steel drawn from a bore of 11.34 cm² leave the level 35 mm lower; more air is further from a lock
    const lock = (airHeight: number): number =>
      result(loadCalculator('oil-height'), { airHeight }, 'lockMargin')
    expect(lock(165)).toBeGreaterThan(lock(130))
    // 20 cm³ of old oil raise it by 18 mm, and less air is nearer to one
    expect(lock(112)).toBeLessThan(lock(130))
  })
  test('no sentence lets a spring that is in the leg overfill it', () => {
    const wrong = /with the spring in\b(?!.*(?:too little|other way|underfill|manual reads))/i
    const full = /\b(overfill|too full|too much oil|locks?)\b/i
    const found = sentences.filter(({ sentence }) => wrong.test(sentence) && full.test(sentence))
    expect(found).toEqual([])
  })
})

test('a spring is read from outside its latched guard, with the tools for it', () => {
  const { tools, stop } = procedure('test-a-spring')
  expect(tools.join('; ')).toMatch(/rule fixed outside the guard, with a pointer on the moving plate/)
  expect(tools.join('; ')).toMatch(/display outside the guard/)
  expect(stop).toContainEqual(expect.stringMatching(/can’t both be read with the guard closed/))
  const own = procedure('test-a-spring').steps
  const [from, to] = ['close-the-guard', 'open-the-guard'].map((id) =>
    placesOf('test-a-spring').indexOf(id),
  )
  const inside = own.slice(from, to).filter((step) => step.readings.length > 0)
  expect(inside.length).toBeGreaterThan(1)
  for (const step of inside) expect(step.do, step.id).toMatch(/read pointer and scale/)
})

test('a weighed bike has stops before its brakes go off, and a raised one its side straps too', () => {
  const tools = procedure('weigh-the-bike').tools.join('; ')
  expect(tools).toMatch(/four wheel stops/)
  expect(tools).toMatch(/straps.*for the sides/)
  expect(tools).toMatch(/two strong points/)
  expect(tools).toMatch(/platform[^;]*at least a wheel’s length long/)
  const order = ['fix-the-stops', 'brakes-off', 'read-the-front', 'set-the-platform']
  const raised = ['raise-the-rear', 'stop-and-strap', 'read-it-raised', 'bring-it-down']
  const wanted = [...order, ...raised]
  expect(placesOf('weigh-the-bike').filter((id) => wanted.includes(id))).toEqual(wanted)
  expect(textOf('weigh-the-bike', 'read-it-raised')).toMatch(/Stops in and straps hooked, let/)
})

test('a tyre is washed with soap and water, and a disc cleaned with brake cleaner', () => {
  expect(textOf('refit-and-set-adjusters', 'wash-the-tyre')).toMatch(/tyre with soap and water/)
  expect(textOf('refit-and-set-adjusters', 'clean-the-disc')).toMatch(/disc with brake cleaner/)
  const solvent = /\btyres?\b[^.]*\b(degreaser|solvent|brake cleaner)\b/i
  const found = sentences.filter(
    ({ sentence }) => solvent.test(sentence) && !/\b(never|no|not)\b/i.test(sentence),
  )
  expect(found).toEqual([])
})

test('no blade goes to a coil that works', () => {
  const blade = /\b(scrape|scraped|scraping|blades?|file (?:a|the|off))\b[^.]*\b(coils?|wire|spring)\b/i
  const found = sentences.filter(
    ({ sentence }) => blade.test(sentence) && !/\b(never|no blade|keep blades off)\b/i.test(sentence),
  )
  expect(found).toEqual([])
  expect(textOf('test-a-spring', 'read-the-wire')).toMatch(/Never scrape or file a working coil/)
})

describe('what opens a fork', () => {
  /** Cautions of work inside a leg. */
  const INSIDE = [
    'cartridge-cap-locknut',
    'open-leg-spurts',
    'plate-under-the-locknut',
    'tube-drops-as-the-cap-leaves',
    'washer-cocked-in-tube',
  ]
  const opening = all.filter(({ steps: own }) =>
    own.some(({ cautions: placed }) => placed.some((id) => INSIDE.includes(id))),
  )
  test('stops for every leg that is left shut, and sends to how to tell', () => {
    expect(opening.length).toBeGreaterThanOrEqual(6)
    const kinds = /sealed or charged cartridge, two chambers or an air spring/
    for (const { id, stop = [], before = [], steps: own } of opening) {
      expect(stop.some((text) => kinds.test(text)), id).toBe(true)
      expect([...before, ...own.flatMap((step) => step.cautions)], id).toContain('charged-fork-leg')
    }
    expect(bodyOf('charged-fork-leg')).toMatch(/a valve at a cap or at a foot/)
    expect(bodyOf('charged-fork-leg')).toMatch(/a bolt there says nothing/)
  })

  /* Each was missing once: what drops, what sinks, what is driven home, what clamps the tube, what the work can upset. */
  const STEPS: readonly (readonly [string, string, RegExp])[] = [
    ['open-the-fork-top', 'hold-the-tube', /sinks into the slider.*falls as far as the casting/],
    ['open-the-fork-top', 'hold-the-rod', /rod puller.*sinks into the cartridge/],
    ['open-the-fork-top', 'wind-rebound-out', /fully out.*needle is off its seat/],
    ['open-the-fork-top', 'free-the-clip-ons', /clamps round a fork tube.*Let no hose carry it/],
    ['open-the-fork-top', 'try-the-head', /feel for a knock at the head/],
    ['open-the-fork-top', 'rock-it-again', /Rock the bike again/],
    ['swap-fork-springs', 'check-the-rod', /puller or the loop of wire is on it/],
    ['set-oil-height', 'secure-the-inside', /can slide out/],
    ['refit-and-set-adjusters', 'draw-the-rod-up', /by its puller/],
    ['refit-and-set-adjusters', 'back-the-rebound-out', /fully out before the cap goes/],
    ['refit-and-set-adjusters', 'count-the-range', /compare with the range before/],
    ['refit-and-set-adjusters', 'refit-the-bar', /clip-ons to their marks/],
    ['refit-and-set-adjusters', 'try-the-head', /Compare with what you wrote before/],
    ['refit-and-set-adjusters', 'spin-the-wheel', /turn as freely as before/],
    ['change-ride-height', 'check-the-head', /can have changed the head bearings/],
  ]
  test.each(STEPS)('has its step in %s: %s', (id, step, says) => {
    expect(textOf(id, step)).toMatch(says)
  })
})

test('tyre pressures come first in the inspection, and bearings are felt with the wheel raised', () => {
  expect(procedure('inspect-first').steps[0]!.readings).toEqual([
    'tyrePressureFront',
    'tyrePressureRear',
  ])
  for (const [id, lift, felt] of [
    ['support-the-front', 'lift-slowly', ['check-the-head', 'rock-the-wheel']],
    ['measure-rear-sag', 'hold-the-front', ['rock-the-rear-wheel', 'push-the-swing-arm']],
  ] as const) {
    const places = placesOf(id)
    for (const step of felt) expect(places.indexOf(step), step).toBeGreaterThan(places.indexOf(lift))
  }
})

describe('a caution', () => {
  test('stands only where one of the hazards is its own', () => {
    const stray = steps.flatMap(({ where, step }) =>
      step.cautions
        .filter((id) => !step.hazards.some((hazard) => covers.get(id)!.includes(hazard)))
        .map((id) => `${where}: ${id}`),
    )
    expect(stray).toEqual([])
  })
  test('of a wheel off the ground is not that of a bike held on both its wheels', () => {
    const held = steps.filter(({ step }) =>
      /^(Hold the bike upright|Have one person hold the bike upright)/.test(step.do),
    )
    expect(held.length).toBeGreaterThan(4)
    for (const { where, step } of held)
      expect(step.cautions, where).not.toContain('bike-can-fall')
  })
  test('of a bike that falls stands at each push, lift or bounce of one that somebody holds', () => {
    const FALLS = ['bike-held-upright', 'bike-held-upright-with-rider', 'bike-can-fall', 'raised-bike-on-scales']
    const pushes = /\b(push|lift) the (front|tail|rear)\b(?! wheel)|\bbounce\b|\bafter a (push|lift)\b/i
    const bare = steps.filter(
      ({ step }) =>
        // a step may name another in quotation marks
        pushes.test(step.do.replace(/“[^”]*”/g, '')) &&
        !step.cautions.some((id) => FALLS.includes(id)),
    )
    expect(bare.map(({ where }) => where)).toEqual([])
  })
  test.each([
    'bike-held-upright',
    'brake-cleaner-vapour',
    'brake-fluid',
    'charged-fork-leg',
    'exhaust-fumes',
    'fingers-in-the-wheel',
    'ground-clearance-when-lowered',
    'hand-under-the-tyre',
    'hands-in-the-suspension',
    'hot-parts',
    'petrol-aboard',
    'plate-under-the-locknut',
    'rear-clearance',
    'strap-recoil',
    'tube-drops-as-the-cap-leaves',
    'tubes-gripped-in-both-yokes',
  ])('%s is there, and stands at a step', (id) => {
    expect(steps.some(({ step }) => step.cautions.includes(id))).toBe(true)
  })
  test('of what touches the road stands in every chapter that lowers the bike', () => {
    for (const id of ['ride-height', 'rake-and-trail', 'rear-end', 'whole-bike'])
      expect(readFileSync(`content/chapters/${id}.mdx`, 'utf8'), id).toMatch(
        /<Caution id="ground-clearance-when-lowered" \/>|\/cautions\/ground-clearance-when-lowered\//,
      )
  })
})

test('the work is judged by the spread of its readings, and by the band only where friction has grown', () => {
  const places = placesOf('check-against-the-mark')
  expect(places.indexOf('judge-the-spread')).toBeLessThan(places.indexOf('judge-the-band'))
  expect(textOf('check-against-the-mark', 'judge-the-spread')).toMatch(
    /smaller than the spread of your three readings.*also if the friction band is wider/,
  )
  expect(textOf('check-against-the-mark', 'judge-the-band')).toMatch(/^If the friction band has grown/)
})
