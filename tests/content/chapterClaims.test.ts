import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { loadCalculator } from '../../src/calculators/index.ts'
import { result } from '../calculators/evaluated.ts'

/* Sentences of which the opposite, or half, once stood in a chapter: each is found, and worked out where a calculator can. */

const chapter = (id: string): string =>
  readFileSync(`content/chapters/${id}.mdx`, 'utf8').replaceAll(/\s+/g, ' ')

test('the steering axis is not the leg: it runs through the bearings of the steering head', () => {
  const text = chapter('rake-and-trail')
  expect(text).toMatch(/It runs through the bearings in the <Term id="steering-head">/)
  expect(text).not.toMatch(/line through the fork/i)
})

test('the damping chapter tells its ramp as the card has it, and a kerb as worse', () => {
  const { inputs } = loadCalculator('damping')
  const usual = (id: string): unknown => inputs[id]!.default
  expect([usual('road'), usual('height'), usual('length'), usual('speed')]).toEqual([
    'step',
    30,
    1,
    40,
  ])
  expect(chapter('damping')).toContain('a ramp at 40 km/h, 30 mm high and a metre long')
  expect(chapter('damping')).toContain('A kerb is another matter')
  const least = (length: number): number =>
    result(loadCalculator('damping'), { compression: 700, rebound: 1500, length }, 'leastLoad')
  // on half a metre the tyre is off the road, which a kerb is worse than
  expect(least(1)).toBeGreaterThan(900)
  expect(least(0.5)).toBe(0)
})

test('over waves the stiffer direction wins: slow rebound pulls down, stiff compression lifts', () => {
  expect(chapter('damping')).toContain('The stiffer direction wins, whichever it is.')
  const mean = (compression: number, rebound: number): number =>
    result(
      loadCalculator('damping'),
      { road: 'waves', length: 4, height: 20, speed: 60, compression, rebound },
      'meanTravel',
    )
  const even = mean(700, 700)
  // several millimetres either way, far more than a mean of a ride may be off by
  expect(mean(700, 3000)).toBeGreaterThan(even + 5)
  expect(mean(3000, 700)).toBeLessThan(even - 5)
})

test('with half the trail the bicycle’s weave gets better, and both its other motions get worse', () => {
  expect(chapter('steering-modes')).toContain('<Option right>One gets better, and two get worse.')
  const at = (trail: number, motion: string): number =>
    result(loadCalculator('steering-modes'), { trail, speed: 18 }, motion)
  expect(at(40, 'weave')).toBeLessThan(at(80, 'weave'))
  expect(at(40, 'fall')).toBeGreaterThan(at(80, 'fall'))
  expect(at(40, 'back')).toBeGreaterThan(at(80, 'back'))
})

test('the rear end’s chapter says what a higher back does to the steering, and warns of it', () => {
  const text = chapter('rear-end')
  expect(text).toMatch(/off the rake and .* off the <Term id="trail">/)
  expect(text).toContain('<Caution id="change-of-geometry-and-speed" />')
  const trail = (rearPreloadChange: number): number =>
    result(loadCalculator('stance'), { forkPreloadChange: 0, rearPreloadChange }, 'trail')
  const tubes = (amount: number): number =>
    result(loadCalculator('ride-height'), { by: 'tubes', amount }, 'trail')
  // "three quarters of what 10 mm of tube take off": from two thirds to five sixths is so called
  const share = (trail(0) - trail(3)) / (tubes(0) - tubes(10))
  expect(share).toBeGreaterThan(2 / 3)
  expect(share).toBeLessThan(5 / 6)
})

test('the rear wheel’s lift is told as the most, and not as a limit to ride up to', () => {
  const text = chapter('braking-dive')
  expect(text).toContain('Take that as the most, and never as a limit to ride up to.')
  expect(text).toContain('A brake put on quickly lifts it sooner still')
})

test('a screw in a cap or a foot, or a wire beside a leg, is not taken for what is inside', () => {
  const text = chapter('inside-the-fork')
  expect(text).toContain('A bolt goes up through the foot of nearly every leg')
  expect(text).toContain('a small screw in a cap may let air out')
  expect(text).toContain('A wire down the outside to the wheel commonly belongs to the ABS')
})

test('the README opens with the work, then says what the site is', () => {
  const [, first = '', second = ''] = readFileSync('README.md', 'utf8').split('\n\n')
  // who, what has to be done from the first day to the last, and for whom it is explained
  for (const says of [
    /^Somebody at a bench fits fork springs and height adjusters/,
    /back to the mark/,
    /customers at the counter and to pupils in a class/,
    /From booking in to the follow-up/,
    /Witness Mark is one place/,
  ])
    expect(first.replaceAll('\n', ' ')).toMatch(says)
  expect(first.indexOf('Witness Mark')).toBeGreaterThan(first.length / 2)
  expect(second).toMatch(/^It is a static site/)
})
