import { stepOvershoot } from './damping.ts'
import { nonNegative, positive, record } from './domain.ts'

// Below this many radians the ramp is a step to the last digit, and the quotient below would lose its digits to underflow.
const STEP_LIKE = 1e-100

/**
 * Share [1] by which a damped mass passes its settled change when the load grows evenly over `rampTime` [s ≥ 0];
 * damping ratio [1, ≥ 0], natural frequency [rad/s, > 0]. A ramp of 0 s gives `stepOvershoot`; 0 from a damping ratio of 1 on.
 * Exact. Source: the step response (Rao, ch. 4) averaged over the ramp.
 *
 * The step response differs from its end by Re(C e^{λt}), λ = ω(−ζ + i√(1 − ζ²)). Averaged over the ramp, C becomes C φ(λT) with
 * φ(z) = (e^z − 1)/z. The ramp response never falls before the ramp ends, so the first peak after it is the highest, and its
 * height is |φ|·exp(−(π − arg φ)·ζ/√(1 − ζ²)).
 */
export function rampOvershoot(ramp: {
  dampingRatio: number
  naturalFrequency: number
  rampTime: number
}): number {
  record('ramp', ramp)
  const zeta = nonNegative('dampingRatio', ramp.dampingRatio)
  const angle =
    positive('naturalFrequency', ramp.naturalFrequency) * nonNegative('rampTime', ramp.rampTime)
  if (zeta >= 1) return 0
  if (angle < STEP_LIKE) return stepOvershoot(zeta)
  if (!Number.isFinite(angle)) return 0
  const root = Math.sqrt((1 - zeta) * (1 + zeta))
  const x = -zeta * angle
  const y = root * angle
  // e^z − 1 without cancellation.
  const re = Math.expm1(x) * Math.cos(y) - 2 * Math.sin(y / 2) ** 2
  const im = Math.exp(x) * Math.sin(y)
  // times the conjugate of z/|z|: the numerator of φ
  const phiRe = -re * zeta + im * root
  const phiIm = -re * root - im * zeta
  // The argument lies in 0…π; rounding at the lower end must not wrap it.
  const argument = Math.abs(Math.atan2(phiIm, phiRe))
  return (Math.hypot(phiRe, phiIm) / angle) * Math.exp((-zeta / root) * (Math.PI - argument))
}
