import type { ForkLeg } from '../forkLayout.ts'

/** The fork leg of the pictures: invented, with the lengths of the fork stack's first worked case (478 deep, spring 335, spacer 125, one washer of 2, 15 mm of preload). */
export const LEG: ForkLeg = {
  tubeDiameter: 0.043,
  boreDiameter: 0.038,
  tubeDepth: 0.478,
  travel: 0.12,
  capReach: 0.031,
  washers: [0.002],
  spacerLength: 0.125,
  spring: { freeLength: 0.335, wireDiameter: 0.0045, coils: 30 },
  damper: 'cartridge',
}
