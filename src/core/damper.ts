import { finite, nonNegative, oneOf, positive, record, representable } from './domain.ts'

/**
 * How a damper's force [N] grows with speed [m/s], one way. `linear`: coefficient [N s/m] times speed. `square`: coefficient [N s²/m²] times
 * speed squared (a plain hole). `digressive`: a straight line up to the knee, then on with the slope `after` [N s/m] (a shim stack).
 */
export type Law =
  | { kind: 'linear'; coefficient: number }
  | { kind: 'square'; coefficient: number }
  | { kind: 'digressive'; knee: { velocity: number; force: number }; after: number }

/** A damper as felt at the wheel: one law for each way. */
export interface Damper {
  compression: Law
  rebound: Law
}

/** The force of a law against speed (≥ 0), ready to call; refuses coefficients below 0 and a knee at speed 0. */
export function lawOf(name: string, law: Law): (speed: number) => number {
  oneOf(`${name}.kind`, record(name, law).kind, ['linear', 'square', 'digressive'])
  if (law.kind === 'digressive') {
    const { velocity, force } = record(`${name}.knee`, law.knee)
    const before =
      nonNegative(`${name}.knee.force`, force) / positive(`${name}.knee.velocity`, velocity)
    const after = nonNegative(`${name}.after`, law.after)
    return (speed) => (speed <= velocity ? before * speed : force + after * (speed - velocity))
  }
  const coefficient = nonNegative(`${name}.coefficient`, law.coefficient)
  return law.kind === 'linear'
    ? (speed) => coefficient * speed
    : (speed) => coefficient * speed * speed
}

/** Speed of a law's knee [m/s], or null. */
export function kneeOf(law: Law): number | null {
  return law.kind === 'digressive' ? law.knee.velocity : null
}

/** Whether both ways are one straight line, so that nothing changes where the damper turns round. */
export function isOneLine({ compression, rebound }: Damper): boolean {
  return (
    compression.kind === 'linear' &&
    rebound.kind === 'linear' &&
    compression.coefficient === rebound.coefficient
  )
}

/**
 * Force [N] of a damper at a velocity [m/s], compression positive: it acts against the movement and has the velocity's sign. 0 at rest, so damping
 * holds nothing up. Refuses coefficients below 0 and a knee at speed 0.
 */
export function damperForce(damper: Damper, velocity: number): number {
  const compression = lawOf('damper.compression', record('damper', damper).compression)
  const rebound = lawOf('damper.rebound', damper.rebound)
  const speed = finite('velocity', velocity)
  return representable('force', speed >= 0 ? compression(speed) : -rebound(-speed))
}
