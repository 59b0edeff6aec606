import { loadCalculator } from '../../src/calculators/index.ts'
import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import type { Given } from '../../src/machine/given.ts'
import { expectNear, result, shown } from '../calculators/evaluated.ts'

const chooseRate = loadCalculator('choose-rate')
const coilRate = loadCalculator('coil-rate')
const preloadVersusRate = loadCalculator('preload-versus-rate')
const rateFromSag = loadCalculator('rate-from-sag')
const stance = loadCalculator('stance')

/* A sentence may say a size in words, "about a seventh" or "hardly does", and such words are not computed when the page is built.
   Each test here finds the sentence, and works out what it says with the calculators. The bounds are as wide as the words. */

/** Front travel of the roadster on its brakes at 0.7 g [mm]. */
const braking = (change: Given): number => result(stance, { situation: 'braking', deceleration: 0.7, forkPreloadChange: 0, ...change }, 'frontTravel')

/** Front travel of the roadster at rest with its rider [mm]. */
const atRest = (change: Given): number => result(stance, { forkPreloadChange: 0, ...change }, 'frontTravel')

/** Travel used in the sealed fork of the preload calculator [mm]. */
const sealed = (given: Given): number => result(preloadVersusRate, { preload: 15, gas: 'sealed', load: 974, ...given }, 'travelUsed')

/** The least left in hand after a quick brake, at the roadster’s rider sag [mm]. */
function inHand(riderMass: number, rate: number, change: Given = {}): number {
  const rows = shown(chooseRate, { riderMass, riderSag: 35.2, rates: [[rate]], ...change }).now.output.rows as unknown as { low: number }[][]
  return 1e3 * rows[0]![5]!.low
}

/** Where the band of rates worth trying starts [N/mm]. */
const starts = (given: Given): number => (shown(chooseRate, given).now.output.candidates as { low: number }).low / 1e3

function says(chapter: string, ...sentences: string[]): void {
  const text = readFileSync(`content/chapters/${chapter}.mdx`, 'utf8').replace(/\s+/g, ' ')
  for (const sentence of sentences) expect(text).toContain(sentence)
}

const STEP = { forkRateChange: 0.5, forkPreloadChange: -2.64 }

test('preload keeps the fork further from its stop than a step of spring or more oil does, and does not cure the dive', () => {
  says('preload-versus-rate', 'It is no cure for the <Term id="dive">', 'Springs of 9.5 N/mm, sag as before', 'Eight turns do more than either', 'it takes two steps of spring to leave as much when the brake is grabbed', 'and leaves the bike on its mark.')
  const [before, preload, spring, oil] = [braking({}), braking({ forkPreloadChange: 8 }), braking(STEP), braking({ oilHeightChange: -10 })]
  expect(before - preload).toBeGreaterThan(before - spring)
  expect(before - preload).toBeGreaterThan(before - oil)
  expect(preload - atRest({ forkPreloadChange: 8 })).toBeGreaterThan(before - atRest({}))
  const grabbed = inHand(80, 9, { riderSag: 27.8 })
  expect(inHand(80, 9.5)).toBeLessThan(grabbed)
  expect(inHand(80, 10)).toBeGreaterThan(grabbed)
  // the same sag to the digit that the page prints; "on its mark" to half a millimetre, what a rule shows
  expect(Math.abs(atRest(STEP) - atRest({}))).toBeLessThan(0.05)
  expect(Math.abs(atRest({ oilHeightChange: -10 }) - atRest({}))).toBeLessThan(0.5)
})

test('the preload that puts the bike alone on its top stop leaves the spring room, and the one before does not reach it', () => {
  says('preload-versus-rate', 'At 36 mm of preload, and without a top-out spring', 'this fork gets there only past 36 mm, with nobody on')
  const leaves = (preload: number): number => result(preloadVersusRate, { preload }, 'loadToLeaveTopStop')
  expect(leaves(36)).toBeGreaterThan(640)
  expect(leaves(35)).toBeLessThan(640)
  // preload and 120 mm of travel, before the coils touch
  expect(result(coilRate, { deflection: 36 + 120 }, 'margin')).toBeGreaterThan(0)
})

test('friction can hide five millimetres of preload, and not ten', () => {
  says('preload-versus-rate', 'friction can hide most of that until the fork is settled as it was before', 'eight turns can look like two')
  const band = sealed({ load: 1034 }) - sealed({ load: 914 })
  expect(sealed({}) - sealed({ preload: 20 })).toBeLessThan(band)
  expect(sealed({}) - sealed({ preload: 25 })).toBeGreaterThan(band)
  // after a lift before and a push afterwards the band comes off the rise; two turns are within half a millimetre of what is left
  expectNear(atRest({}) - atRest({ forkPreloadChange: 8 }) - band, atRest({}) - atRest({ forkPreloadChange: 2 }), 0.5)
})

test('oil height moves the sag by tenths of a millimetre, and preload by what the question shows', () => {
  says('sag', 'how high the oil is counts for tenths of one', 'You would be looking for a cause a tenth as large as it must be.', 'Four and a half millimetres less preload in each leg do this, and')
  const asked = sealed({ preload: 15 - 4.5 }) - sealed({})
  expectNear(asked, 4, 0.1)
  expectNear(sealed({}) - sealed({ airHeight: 110 }), asked / 10, 0.05)
})

test('like for like, a heavier rider needs about a seventh more rate, and a step and a half for the sag', () => {
  says('choosing-a-spring', 'The card asks that 4 mm be left in hand after a quick brake, because that is what the fitted spring leaves', 'needs about a seventh more', 'about one and a half steps on the shelf')
  expectNear(inHand(80, 9), 4, 0.5)
  // 0.1 N/mm, the last digit of the rate that is named, is worth 0.5 mm in hand
  expectNear(inHand(100, 10.2), inHand(80, 9), 0.25)
  expectNear(10.2 / 9 - 1, 1 / 7, 0.015)
  const forSag = (9 * result(chooseRate, { riderMass: 100 }, 'forkLoad')) / result(chooseRate, { riderMass: 80 }, 'forkLoad')
  expectNear(forSag, 9.8, 0.05)
  expectNear((forSag - 9) / 0.5, 1.5, 0.1)
})

test('like for like holds for any hard stop, and wherever the rider sits', () => {
  says('choosing-a-spring', 'from 0.6 g to 0.8 g, 10.2 N/mm leave the heavier rider what 9.0 N/mm leave the lighter, to half a millimetre', 'and leave as much in hand')
  for (const deceleration of [0.6, 0.65, 0.7, 0.75, 0.8]) expectNear(inHand(100, 10.2, { deceleration }), inHand(80, 9, { deceleration }), 0.5)
  // a tenth of a millimetre is less than anybody measures
  expectNear(inHand(80, 9, { riderShare: 51.5 }), inHand(80, 9, { riderShare: 46.5 }), 0.1)
})

test('the bands of the choosing chapter begin where it says', () => {
  says('choosing-a-spring', 'so that the spring the bike was sold with drops out', 'the shelf has 10.0 and 10.5 N/mm for that')
  expectNear(starts({ riderMass: 80, riderSag: 35.2, reserve: 4 }), 9, 1e-9)
  expectNear(starts({ riderMass: 100, riderSag: 35.2, reserve: 4 }), 10.5, 1e-9)
  expect(starts({ riderMass: 80, reserve: 10 })).toBeGreaterThan(9)
  expectNear(result(chooseRate, { riderMass: 100, riderSag: 35.2, reserve: 4 }, 'sameRate'), 10.2, 0.05)
})

test('two sags give the rate to about a step when read as taught, and to two steps when read once', () => {
  says('rate-from-sag', 'So it is about one step either way, where naming a spring takes half a step.', 'That is less than a step, and still too much to name a spring.')
  const within = (given: Given): number => result(rateFromSag, given, 'within')
  // six lengths within 1 mm and three loads within 0.5 kg each: their means are within a root of six and a root of three less
  const taught = within({ readingPlusMinus: 1 / Math.sqrt(6), loadPlusMinus: 0.5 / Math.sqrt(3) })
  expectNear(within({ readingPlusMinus: 0.4, loadPlusMinus: 0.3 }), taught, 0.02)
  expect(taught).toBeGreaterThan(0.25)
  expect(taught).toBeLessThan(0.5)
  expectNear(within({}), 1, 0.05)
  expect(within({ readingPlusMinus: 0.2, loadPlusMinus: 0.2 })).toBeLessThan(0.25)
})
