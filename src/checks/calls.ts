import { ATMOSPHERE, STANDARD_GRAVITY } from '../core/index.ts'
import { call, type Call } from './call.ts'
import { chain } from './chain.ts'
import { curves } from './curves.ts'
import { gas } from './gas.ts'
import { geometry } from './geometry.ts'
import { integrator } from './integrator.ts'
import { measuring } from './measuring.ts'
import { oil } from './oil.ts'
import { springs } from './springs.ts'
import { steering } from './steering.ts'
import { vibration } from './vibration.ts'
import { whole } from './whole.ts'

/** Everything that a check can call, by the name that content/checks uses. */
export const calls: Readonly<Record<string, Call>> = {
  /** a unit: what went in, in SI; the published value's unit turns it back */
  unit: call([], ({ of }: { of: number }) => of),
  standardGravity: call(['STANDARD_GRAVITY'], () => STANDARD_GRAVITY),
  atmosphere: call(['ATMOSPHERE'], () => ATMOSPHERE),
  ...springs,
  ...gas,
  ...geometry,
  ...vibration,
  ...oil,
  ...measuring,
  ...curves,
  ...chain,
  ...steering,
  ...integrator,
  ...whole,
}
