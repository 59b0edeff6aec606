import { DomainError, solveStance, springDeflection, tyreRadius } from '../core/index.ts'
import type { Stance } from '../core/index.ts'
import { bikePicture } from './bike-picture.ts'
import type { BikePicture } from './bike-picture.ts'
import { bikeOf, geometryOf } from './bikes.ts'
import type { Fitted } from './bikes.ts'
import type { Given, InputValues, OutputValues } from './define.ts'
import { measured } from './measured.ts'
import type { inputs, outputs } from './tyre-radius.fields.ts'
import { aboard } from './whole-bike.ts'

type Values = InputValues<typeof inputs>

/** What is wrong with a marking, and how to put it right. */
function problem(text: string): string | undefined {
  if (text.trim() === '') return 'Enter the size from the tyre’s sidewall, as 120/70-17'
  try {
    tyreRadius(text)
    return undefined
  } catch (error) {
    if (!(error instanceof DomainError)) throw error
    return `The tyre’s marking ${error.reason}. Copy the size from the sidewall: width / aspect ratio - rim code`
  }
}

/** What judges the text of each input. */
export const checks = { fitted: problem, marking: problem }

const fittedFor = ({ end, marking }: Values): Fitted => (end === 'front' ? { frontRadius: tyreRadius(marking) } : { rearRadius: tyreRadius(marking) })

function stand(input: Values): { fitted: Fitted; stance: Stance } {
  const fitted = fittedFor(input)
  const stance = solveStance(bikeOf(input.bike, fitted), { payload: aboard(input.bike, { rider: input.rider }) })
  return { fitted, stance }
}

/** SI in, SI out. */
export function compute(input: Values): OutputValues<typeof outputs> {
  const { stance } = stand(input)
  const radius = tyreRadius(input.marking)
  const wheelLoad = input.end === 'front' ? stance.frontLoad : stance.rearLoad
  const squash = springDeflection([{ rate: input.tyreRate }], Math.max(0, wheelLoad))
  return {
    radius: measured(([r]) => r!, [radius], [input.radiusPlusMinus]),
    loadedRadius: measured(([r]) => r! - squash, [radius], [input.radiusPlusMinus]),
    trail: stance.trail,
    rake: stance.rake,
    diameter: 2 * radius,
    squash,
    wheelLoad,
  }
}

/** Before: the tyre that was fitted. */
export const baseline = (given: Given): Given => ({ marking: given.fitted ?? '120/70-17' })

/** The bike as it stands on the tyre now [SI]. */
export function picture(input: Values): BikePicture {
  const { fitted, stance } = stand(input)
  return bikePicture(input.bike, geometryOf(input.bike, fitted), stance)
}
