export * from './domain.ts'
export * from './constants.ts'
export * from './spring.ts'
export * from './coil.ts'
export * from './gas.ts'
export * from './fork.ts'
export * from './ratio.ts'
export * from './rear.ts'
export * from './trail.ts'
export * from './chassis.ts'
export * from './sag.ts'
export * from './marks.ts'
export * from './root.ts'
export * from './damping.ts'
export * from './overshoot.ts'
export * from './flow.ts'
export * from './stack.ts'
export * from './tyre.ts'
export * from './oil.ts'
export * from './viscosityIndex.ts'
export * from './steering.ts'
export * from './ride.ts'
export { damperForce, type Damper, type Law } from './damper.ts'
export * from './bike.ts'
export { solveStance, type Stance, type StanceOptions, type Stop } from './stance.ts'
export type { TyreSpring, Tyres, TyreSquash } from './tyreSquash.ts'
export * from './lift.ts'
export {
  bounceAndPitch,
  type HalfBike,
  liftBand,
  type LiftSpread,
  rearUnloadingOvershoot,
} from './quickBrake.ts'
export * from './dive.ts'
export * from './leanTouch.ts'
export * from './chain.ts'
export * from './swingArmChain.ts'
export * from './squat.ts'
export * from './loads.ts'
export * from './scales.ts'
export * from './uncertainty.ts'
export * from './student.ts'
export * from './fisher.ts'
export * from './gaugeStudy.ts'
export * from './outliers.ts'
export * from './tubeFlow.ts'
export * from './closedGas.ts'
export * from './regression.ts'
export * from './estimate.ts'
export * from './centreOfGravity.ts'
export * from './progressive.ts'
export { forceNeeded } from './forceNeeded.ts'
export { chooseRate, withSprings } from './choose.ts'
export type { Choice, ChoiceOfBike, ChoiceTarget, Miss, RateRow } from './choose.ts'
export * from './inHand.ts'
export {
  oilRiseLeaving,
  rateLeaving,
  springForceAt,
  springFromSags,
  type SagsRead,
  withOilRaised,
} from './likeForLike.ts'
export { changeBike, MEANS, type BikeChange, type MeanId } from './bikeChange.ts'
export {
  AIMS,
  aimReading,
  aimStances,
  axlePlaces,
  CASE_OF,
  type AimCase,
  type AimCases,
  type AimId,
} from './changeAims.ts'
export type { Mean } from './changeGrid.ts'
export { spreadOfChange, type AimSpread, type KnownWithin } from './changeSpread.ts'
export { changeDraws, type DrawnTask } from './changeDraws.ts'
export type { LeftOut } from './changeTrial.ts'
export { changeLooks, changeSearch, findChange } from './findChange.ts'
export type { Aim, ChangeLook, ChangeTask, ChangeWanted, FoundChange, Way } from './changeTask.ts'
export * from './brakingOvershoot.ts'
export * from './oilLevel.ts'
export * from './atmosphere.ts'
export { fitNonlinear, type CurveToFit, type NonlinearFit } from './fitNonlinear.ts'
export * from './sample.ts'
export { normalStream, randomStream } from './random.ts'
export { fitBike, type BikeFit, type FittedValue, type Residual } from './fitBike.ts'
export { sampleBike, type DrawnBike } from './sampleBike.ts'
export type {
  At,
  DeepestReading,
  LengthReading,
  LoadReading,
  Observation,
  Settled,
  SpringForceReading,
  TravelReading,
} from './observation.ts'
export type { Estimate, PlusMinus, Range } from './plusMinus.ts'
export type { Prior } from './bikeProblem.ts'
export type { BikeParameter } from './bikeParameters.ts'
