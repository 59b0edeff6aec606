import { chainSlack } from './chain-slack.ts'
import { chooseRate } from './choose-rate.ts'
import { findChange } from './find-change.ts'
import { forkStack } from './fork-stack.ts'
import { marks } from './marks.ts'
import { oilViscosity } from './oil-viscosity.ts'
import { preloadVersusRate } from './preload-versus-rate.ts'
import { progressiveSpring } from './progressive-spring.ts'
import { rateFromSag } from './rate-from-sag.ts'
import { rearRate } from './rear-rate.ts'
import { sag } from './sag.ts'
import { springTest } from './spring-test.ts'
import { stance } from './stance.ts'
import type { Restated } from './state.ts'
import { steeringModes } from './steering-modes.ts'
import { wheelLoads } from './wheel-loads.ts'

/** Every verdict of every calculator, said a second time. */
export const RESTATED: readonly Restated[] = [
  sag,
  marks,
  rateFromSag,
  chooseRate,
  forkStack,
  preloadVersusRate,
  stance,
  chainSlack,
  rearRate,
  springTest,
  progressiveSpring,
  steeringModes,
  oilViscosity,
  wheelLoads,
  findChange,
]
