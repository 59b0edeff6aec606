import type { ComponentType } from 'preact'
import type { FigureProps } from './props.ts'

/** The figure of each calculator. Each is a chunk of its own. */
const figures: Record<string, () => Promise<{ default: unknown }>> = {
  marks: () => import('./Marks.tsx'),
  'coil-rate': () => import('./CoilRate.tsx'),
  'spring-test': () => import('./SpringTest.tsx'),
  'preload-versus-rate': () => import('./PreloadVersusRate.tsx'),
  sag: () => import('./Sag.tsx'),
  'rate-from-sag': () => import('./RateFromSag.tsx'),
  'choose-rate': () => import('./ChooseRate.tsx'),
  'fork-stack': () => import('./ForkStack.tsx'),
  'progressive-spring': () => import('./ProgressiveSpring.tsx'),
  'ride-height': () => import('./RideHeight.tsx'),
  trail: () => import('./Trail.tsx'),
  'tyre-radius': () => import('./TyreRadius.tsx'),
  'wheel-loads': () => import('./WheelLoads.tsx'),
  'cg-height': () => import('./CgHeight.tsx'),
  'braking-dive': () => import('./BrakingDive.tsx'),
  'oil-height': () => import('./OilHeight.tsx'),
  'oil-viscosity': () => import('./OilViscosity.tsx'),
  damping: () => import('./Damping.tsx'),
  'rear-rate': () => import('./RearRate.tsx'),
  stance: () => import('./Stance.tsx'),
  'steering-modes': () => import('./SteeringModes.tsx'),
}

/** Loads a calculator's figure; null when it has none. */
export async function loadFigure(id: string): Promise<ComponentType<FigureProps<unknown>> | null> {
  const loader = figures[id]
  return loader === undefined ? null : ((await loader()).default as ComponentType<FigureProps<unknown>>)
}
