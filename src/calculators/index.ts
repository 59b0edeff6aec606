import type { Definition } from './define.ts'

/** Every calculator by id. Each loads by itself, so that a page carries only its own. */
const loaders = {
  marks: () => import('./marks.ts'),
  'coil-rate': () => import('./coil-rate.ts'),
  'spring-test': () => import('./spring-test.ts'),
  'preload-versus-rate': () => import('./preload-versus-rate.ts'),
  sag: () => import('./sag.ts'),
  'rate-from-sag': () => import('./rate-from-sag.ts'),
  'choose-rate': () => import('./choose-rate.ts'),
  'fork-stack': () => import('./fork-stack.ts'),
  'progressive-spring': () => import('./progressive-spring.ts'),
  'ride-height': () => import('./ride-height.ts'),
  trail: () => import('./trail.ts'),
  'tyre-radius': () => import('./tyre-radius.ts'),
  'wheel-loads': () => import('./wheel-loads.ts'),
  'cg-height': () => import('./cg-height.ts'),
  'braking-dive': () => import('./braking-dive.ts'),
  'oil-height': () => import('./oil-height.ts'),
  'oil-viscosity': () => import('./oil-viscosity.ts'),
  damping: () => import('./damping.ts'),
  'rear-rate': () => import('./rear-rate.ts'),
  stance: () => import('./stance.ts'),
  'steering-modes': () => import('./steering-modes.ts'),
} satisfies Record<string, () => Promise<{ default: unknown }>>

export type CalculatorId = keyof typeof loaders

/** All ids, in the order of the overview. */
export const calculatorIds = Object.keys(loaders) as CalculatorId[]

export const isCalculatorId = (id: string): id is CalculatorId => id in loaders

/** The definition of one calculator; refuses an id that is not in the registry. */
export async function loadCalculator(id: string): Promise<Definition> {
  if (!isCalculatorId(id)) throw new RangeError(`there is no calculator “${id}”; known are ${calculatorIds.join(', ')}`)
  const module = await loaders[id]()
  // compute, picture and remarks take the inputs of their own definition; the machine checks every value before it calls them
  return module.default as unknown as Definition
}
