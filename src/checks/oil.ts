import {
  bracketedRoot,
  flowCupViscosity,
  gapFlow,
  isoViscosityClass,
  orificeFlow,
  viscosityIndex,
} from '../core/index.ts'
import { call } from './call.ts'

/** Where a class begins and ends [m²/s], asked of the core by halving between a viscosity inside and one outside. */
function classLimits({ inside }: { inside: number }) {
  const grade = isoViscosityClass(inside)
  const side = (viscosity: number): number => (isoViscosityClass(viscosity) === grade ? 1 : -1)
  return {
    grade,
    least: bracketedRoot(side, 0.8 * inside, inside),
    most: bracketedRoot(side, inside, 1.2 * inside),
  }
}

type Hole = Parameters<typeof orificeFlow>[0]

export const oil = {
  viscosityIndex: call(['viscosityIndex'], viscosityIndex),
  isoViscosityClass: call(['isoViscosityClass'], classLimits),
  orificeFlow: call(['orificeFlow'], ({ diameter, ...hole }: Hole & { diameter: number }) =>
    orificeFlow({ ...hole, area: (Math.PI / 4) * diameter ** 2 }),
  ),
  gapFlow: call(['gapFlow'], gapFlow),
  flowCupViscosity: call(['flowCupViscosity'], flowCupViscosity),
}
