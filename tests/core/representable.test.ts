import { expect, test } from 'vitest'
import {
  damperForce,
  DomainError,
  forkStack,
  gasVolume,
  levelChange,
  spacerFor,
} from '../../src/core/index.ts'

const gas = { tubeDiameter: 0.043, boreDiameter: 0.038, airHeight: 0.13 }
const law = { kind: 'square', coefficient: 1e300 } as const
const stack = { tubeDepth: 0.4, capReach: 1.7e308, springLength: 1.7e308 }

test.each([
  [
    'levelChange of a bore of nearly nothing',
    () => levelChange({ volume: 1, boreDiameter: 1e-200 }),
  ],
  ['gasVolume far outside any fork', () => gasVolume(gas, 0.12, 1.7e308 * 1e3)],
  [
    'damperForce at a speed beyond numbers',
    () => damperForce({ compression: law, rebound: law }, 1e300),
  ],
  [
    'forkStack of parts beyond numbers',
    () => forkStack({ ...stack, spacerLength: 0, settings: [0] }),
  ],
  ['spacerFor parts beyond numbers', () => spacerFor({ ...stack, setting: 0, preload: 0 })],
])('%s is refused, not answered with an infinity', (_name, call) => {
  expect(call).toThrow(DomainError)
})
