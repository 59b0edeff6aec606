import type oilHeight from './statement.ts'
import type { Picture } from './solve.ts'
import type { ForkLeg } from '../../drawing/forkLayout.ts'
import type { Drawn } from '../../drawing/props.ts'

/** The leg as the height is read: collapsed, cap and spring out. How deep the tube goes below `cut` [m] does not matter here. */
export function openLeg(
  { input, output, picture }: Drawn<typeof oilHeight, Picture>,
  cut: number,
): ForkLeg {
  const { fork } = input.bike
  return {
    tubeDiameter: fork.tubeDiameter,
    boreDiameter: fork.boreDiameter,
    tubeDepth: cut + picture.travel * 0.25,
    travel: picture.travel,
    used: picture.travel,
    capReach: 0,
    washers: [],
    spacerLength: 0,
    spring: null,
    oilDepth: Number(output.effective),
    upsideDown: fork.kind === 'upside-down',
    damper: 'none',
    open: true,
  }
}
