import { describe, expect, test } from 'vitest'
import { listed, procedures } from './entries.ts'

/* What hands can do depends on the order of the steps. Common practice of the trade, no source. */
const all = procedures()
const stepsOf = (id: string) => all.find((procedure) => procedure.id === id)!.steps
const place = (procedure: string, step: string): number => {
  const index = stepsOf(procedure).findIndex(({ id }) => id === step)
  expect(index, `${procedure} › ${step}`).toBeGreaterThanOrEqual(0)
  return index
}
const textOf = (procedure: string, step: string): string => {
  const { do: action, detail = '' } = stepsOf(procedure)[place(procedure, step)]!
  return `${action} ${detail}`
}

describe('a step can be done where it stands', () => {
  test('the travel ring is read before a cloth moves it', () => {
    const wipe = stepsOf('record-a-baseline').findIndex((step) => step.do.startsWith('Wipe both fork tubes'))
    expect(wipe).toBeGreaterThan(place('record-a-baseline', 'read-the-travel-ring'))
  })

  test('what was felt is written down before a figure is read', () => {
    expect(place('first-ride-checks', 'write-it-down')).toBeLessThan(place('first-ride-checks', 'read-the-marker'))
  })

  test('tight bolts are broken loose with the rear on its stand, before the front is lifted', () => {
    const crack = stepsOf('open-the-fork-top').findIndex((step) => /crack the caliper bolts/.test(step.do))
    expect(stepsOf('open-the-fork-top')[crack]!.do).toMatch(/rear on its stand and the front tyre on the floor/)
    expect(crack).toBeLessThan(place('open-the-fork-top', 'support-and-rock'))
    expect(place('support-the-front', 'break-bolts-loose')).toBeGreaterThan(place('support-the-front', 'fit-the-straps'))
    expect(place('support-the-front', 'break-bolts-loose')).toBeLessThan(place('support-the-front', 'lift-slowly'))
  })

  test('a rider’s feet come down before the stand does', () => {
    const off = all.flatMap(({ id, steps }) => steps.filter((step) => /\bget off\b/.test(step.do)).map((step) => ({ where: `${id} › ${step.id}`, text: step.do })))
    expect(off.length).toBeGreaterThan(3)
    expect(off.filter(({ text }) => /^Put the side stand down/.test(text)).map(({ where }) => where)).toEqual([])
  })

  test('what would drop is held by somebody in the step that frees it', () => {
    const held: [string, string, RegExp][] = [
      ['open-the-fork-top', 'take-the-wheel-out', /holds the wheel up by its tyre/],
      ['open-the-fork-top', 'draw-the-plate-out', /keeps hold of the puller/],
      ['refit-and-set-adjusters', 'set-the-tube-height', /One holds the leg up/],
      ['refit-and-set-adjusters', 'refit-the-wheel', /One lifts it between the legs/],
      ['check-full-travel-clearance', 'fit-the-bare-legs', /One holds each leg, and the wheel/],
      ['change-ride-height', 'loosen-the-lower-yoke', /hold the wheel by its tyre/],
    ]
    for (const [procedure, step, says] of held) expect(textOf(procedure, step), `${procedure} › ${step}`).toMatch(says)
  })

  test('a rear that hangs on stands comes down by the paddock stand', () => {
    expect(textOf('measure-rear-sag', 'set-it-down')).toMatch(/take the weight on the paddock stand again/)
    expect(place('measure-rear-sag', 'hold-it-upright')).toBe(place('measure-rear-sag', 'set-it-down') + 1)
    for (const id of ['measure-motion-ratio', 'set-rear-preload'])
      expect(stepsOf(id).some((step) => /Lower the bike onto both wheels as in measure-rear-sag/.test(step.do)), id).toBe(true)
  })

  test('a front wheel is chocked once the rear is up, because the bike rolls as it goes up', () => {
    for (const up of ['use-the-centre-stand', 'lift-the-rear'])
      expect(place('support-the-rear', 'hold-the-front-wheel')).toBeGreaterThan(place('support-the-rear', up))
    expect(textOf('support-the-rear', 'let-the-rear-down')).toMatch(/free the front brake and take the chocks away first/)
    const card = (listed('stretches.yaml') as unknown as { id: string; take: { of: string; steps: string[] }[] }[]).find(({ id }) => id === 'rear-sag')!
    const steps = card.take.flatMap((take) => (take.of === 'support-the-rear' ? take.steps : []))
    expect(steps.indexOf('hold-the-front-wheel')).toBeGreaterThan(steps.indexOf('lift-the-rear'))
  })

  test('an axle is pulled tight while stand and straps hold the bike, and nobody’s hands alone', () => {
    for (const id of ['refit-and-set-adjusters', 'take-the-front-wheel-out']) {
      expect(textOf(id, 'set-it-down'), id).toMatch(/leave the rear on its stand and the straps on/)
      expect(place(id, 'tighten-the-axle'), id).toBe(place(id, 'set-it-down') + 1)
      expect(textOf(id, 'bounce-the-fork'), id).toMatch(/^Free the straps and the rear stand/)
    }
    expect(textOf('set-the-chain', 'loosen-the-axle')).toMatch(/put the bike on its stand/)
  })

  test('the thread of a rod is read where it can be seen, once the cap is off', () => {
    expect(place('open-the-fork-top', 'read-the-rod')).toBe(place('open-the-fork-top', 'part-the-cap') + 1)
    expect(textOf('open-the-fork-top', 'read-the-rod')).toMatch(/from its end down to the top of the locknut/)
  })

  test('the length that a fork hangs at without its springs is not the one that sag is counted from', () => {
    const { readings = [] } = all.find(({ id }) => id === 'check-full-travel-clearance')!
    expect(readings.map(({ id }) => id)).not.toContain('extended')
  })

  test('the fork’s supports stay where they are while its yokes are loose', () => {
    const before = stepsOf('free-a-binding-fork').slice(0, place('free-a-binding-fork', 'loosen-the-upper-yoke'))
    expect(before.at(-1)!.do).toMatch(/boards under the front tyre/)
    expect(before.at(-1)!.cautions).toContain('hand-under-the-tyre')
  })
})
