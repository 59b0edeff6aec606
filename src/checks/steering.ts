import {
  capsizeSpeed,
  linearModes,
  weaveSpeed,
  whippleMatrices,
  type WhippleParameters,
} from '../core/index.ts'
import { call } from './call.ts'

interface Riding {
  parameters: WhippleParameters
  speed: number
}

/** The four modes by the paper's names: the pair is the weave, the faster of the others the castering. */
function modes({ parameters, speed }: Riding) {
  const all = linearModes(parameters, speed)
  const [slower, faster] = all.filter(({ im }) => im === 0).sort((a, b) => b.re - a.re)
  const pair = all.find(({ im }) => im > 0)
  return { all: all.map(({ re }) => re), weave: pair, capsize: slower?.re, castering: faster?.re }
}

/** The speed at which two real roots meet and become the weave, by halving; and the root there. */
function bifurcation({ parameters }: { parameters: WhippleParameters }) {
  const swings = (speed: number): boolean =>
    linearModes(parameters, speed).some(({ im }) => im !== 0)
  let [before, after] = [0, 1]
  for (let halving = 0; halving < 60; halving++) {
    const middle = (before + after) / 2
    if (swings(middle)) after = middle
    else before = middle
  }
  return { speed: after, root: linearModes(parameters, after)[0]?.re }
}

function weave({ parameters }: { parameters: WhippleParameters }) {
  const speed = weaveSpeed(parameters)
  return {
    speed,
    frequency:
      speed === null
        ? null
        : Math.abs(linearModes(parameters, speed).find(({ im }) => im > 0)?.im ?? Number.NaN),
  }
}

export const steering = {
  whippleMatrices: call(['whippleMatrices'], ({ parameters }: { parameters: WhippleParameters }) =>
    whippleMatrices(parameters),
  ),
  linearModes: call(['linearModes', 'whippleStateMatrix'], modes),
  weaveSpeed: call(['weaveSpeed', 'linearModes'], weave),
  capsizeSpeed: call(['capsizeSpeed'], ({ parameters }: { parameters: WhippleParameters }) =>
    capsizeSpeed(parameters),
  ),
  bifurcationSpeed: call(['linearModes'], bifurcation),
}
