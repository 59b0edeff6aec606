import type { ComponentType } from 'preact'
import type { StillProps } from './props.ts'

/** Pictures of chapters and procedures that belong to no calculator, by name. */
const stills: Record<string, () => Promise<{ default: unknown }>> = {
  'fork-section': () => import('./stills/ForkSection.tsx'),
  washer: () => import('./stills/Washer.tsx'),
  marks: () => import('./stills/Marks.tsx'),
  'front-hung-for-fork-work': () => import('./stills/FrontHungForForkWork.tsx'),
  'front-hung-for-sag': () => import('./stills/FrontHungForSag.tsx'),
  'tyre-on-a-board': () => import('./stills/TyreOnABoard.tsx'),
  'rear-hung-by-the-frame': () => import('./stills/RearHungByTheFrame.tsx'),
  'bike-held-upright': () => import('./stills/BikeHeldUpright.tsx'),
  'weigh-platform': () => import('./stills/WeighPlatform.tsx'),
  'axle-clamp-and-bounce': () => import('./stills/AxleClampAndBounce.tsx'),
  'slotted-plate-and-nut': () => import('./stills/SlottedPlateAndNut.tsx'),
  'calipers-tied-up': () => import('./stills/CalipersTiedUp.tsx'),
  'rod-puller': () => import('./stills/RodPuller.tsx'),
  'fork-outside-kinds': () => import('./stills/ForkOutsideKinds.tsx'),
  'reading-places': () => import('./stills/ReadingPlaces.tsx'),
  spacer: () => import('./stills/Spacer.tsx'),
  'oil-height': () => import('./stills/OilHeight.tsx'),
  adjuster: () => import('./stills/Adjuster.tsx'),
  'sag-lengths': () => import('./stills/SagLengths.tsx'),
  yokes: () => import('./stills/Yokes.tsx'),
  'rear-marks': () => import('./stills/RearMarks.tsx'),
  clickers: () => import('./stills/Clickers.tsx'),
  'lock-to-lock': () => import('./stills/LockToLock.tsx'),
  clearance: () => import('./stills/Clearance.tsx'),
  'spring-test': () => import('./stills/SpringTest.tsx'),
  'motion-ratio': () => import('./stills/MotionRatio.tsx'),
  levels: () => import('./stills/Levels.tsx'),
  chain: () => import('./stills/Chain.tsx'),
  weigh: () => import('./stills/Weigh.tsx'),
  'rig-press': () => import('./stills/RigPress.tsx'),
  'rig-sag': () => import('./stills/RigSag.tsx'),
  'rig-syringe': () => import('./stills/RigSyringe.tsx'),
  'rig-oil-tube': () => import('./stills/RigOilTube.tsx'),
  'fork-kinds': () => import('./stills/ForkKinds.tsx'),
}

export const stillNames = Object.keys(stills)

/** Loads a still picture; null when there is none of that name. */
export async function loadStill(
  name: string,
): Promise<ComponentType<StillProps & Record<string, unknown>> | null> {
  const loader = stills[name]
  return loader === undefined
    ? null
    : ((await loader()).default as ComponentType<StillProps & Record<string, unknown>>)
}
