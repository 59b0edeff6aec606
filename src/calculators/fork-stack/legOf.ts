import type forkStack from './statement.ts'
import type { Picture } from './solve.ts'
import type { ForkLeg } from '../../drawing/forkLayout.ts'
import type { Drawn } from '../../drawing/props.ts'

/** The leg as the section draws it; the adjuster's setting counts as reach of the cap. */
export function legOf({ input, picture }: Drawn<typeof forkStack, Picture>): ForkLeg {
  const { fork } = input.bike
  return {
    tubeDiameter: fork.tubeDiameter,
    boreDiameter: fork.boreDiameter,
    tubeDepth: input.tubeDepth,
    travel: fork.travel,
    capReach: input.capReach + picture.screw,
    washers: input.washers.map(([thickness = 0]) => thickness),
    spacerLength: input.spacerLength,
    spring: { freeLength: input.springLength },
    upsideDown: fork.kind === 'upside-down',
    damper: fork.damper,
  }
}
