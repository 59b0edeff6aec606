import { DomainError, solveStance, springDeflection, tyreRadius } from '../../core/index.ts'
import type { Stance } from '../../core/index.ts'
import { bikePicture } from '../../bikes/picture.ts'
import type { BikePicture } from '../../bikes/picture.ts'
import { bikeOf, geometryOf } from '../../bikes/bikes.ts'
import type { Fitted } from '../../bikes/bikes.ts'
import type { Given } from '../../machine/given.ts'
import type { InputOf, OutputOf } from '../../machine/values.ts'
import { defineWork } from '../../machine/work.ts'
import { measured } from '../../machine/measured.ts'
import type statement from './statement.ts'
import { aboard } from '../../bikes/aboard.ts'

type Values = InputOf<typeof statement>

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
const textProblems = { fitted: problem, marking: problem }

const fittedFor = ({ end, marking }: Values): Fitted =>
  end === 'front' ? { frontRadius: tyreRadius(marking) } : { rearRadius: tyreRadius(marking) }

function stand(input: Values): { fitted: Fitted; stance: Stance } {
  const fitted = fittedFor(input)
  const stance = solveStance(bikeOf(input.bike, fitted), {
    payload: aboard(input.bike, { rider: input.rider }),
  })
  return { fitted, stance }
}

/** SI in, SI out. */
function compute(input: Values, solved: ReturnType<typeof stand>): OutputOf<typeof statement> {
  const { stance } = solved
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
const baseline = (given: Given): Given => ({ marking: given.fitted ?? '120/70-17' })

/** The bike as it stands on the tyre now [SI]. */
function picture(input: Values, solved: ReturnType<typeof stand>): BikePicture {
  const { fitted, stance } = solved
  return bikePicture(input.bike, geometryOf(input.bike, fitted), stance)
}

/** What the figure draws. */
export type Picture = ReturnType<typeof picture>

export default defineWork<typeof statement>({
  solve(input) {
    const solved = stand(input)
    return { outputs: compute(input, solved), picture: () => picture(input, solved) }
  },
  baseline,
  textProblems,
})
