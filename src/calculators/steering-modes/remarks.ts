import { defineRemarks, type Remark, type RemarkContext } from '../../machine/remark.ts'
import type statement from './statement.ts'

/** A growth [1/s] below this changes by half in no less than 14 s: a rider corrects it without noticing. */
export const SLOW = 0.05

/** What the growths mean, and what of it holds for a motorcycle. */
function remarks({
  input,
  output,
  before,
  say,
}: RemarkContext<typeof statement>): readonly Remark[] {
  const all: Remark[] = []
  const weave = typeof output.weave === 'number' ? output.weave : null
  const fall = typeof output.fall === 'number' ? output.fall : null
  if (weave !== null) {
    const does = Math.abs(weave) < SLOW ? 'hardly changes' : weave > 0 ? 'grows' : 'dies out'
    all.push({
      kind: 'reading',
      text: `At ${say.quantity(input.speed, 'km/h', 0)} this bicycle’s weave ${does}${fall === null ? '.' : `, and its slow fall ${Math.abs(fall) < SLOW ? 'hardly changes' : fall > 0 ? 'grows' : 'dies out'}.`}`,
    })
  }
  const ends = [output.weaveEnds, before?.output.weaveEnds]
  if (
    before &&
    before.input.trail !== input.trail &&
    typeof ends[0] === 'number' &&
    typeof ends[1] === 'number'
  ) {
    const less = input.trail < before.input.trail
    const sooner = ends[0] < ends[1]
    all.push({
      kind: 'reading',
      text: `With ${less ? 'less' : 'more'} trail the weave dies out from ${say.quantity(ends[0], 'km/h', 1)}, ${sooner ? 'sooner' : 'later'} than before, and the bars pull back ${less ? 'less' : 'more'}. So more trail is not steadier in every sense, even here.`,
    })
  }
  all.push({
    kind: 'limit',
    text: 'Read the shapes, and take nothing over to a motorcycle. What its trail does to the steering’s pull, the moment above, holds for any two-wheeler.',
  })
  all.push({
    kind: 'caution',
    caution: 'change-of-geometry-and-speed',
    text: 'On a motorcycle change trail in steps small enough to undo, and find out slowly.',
  })
  return all
}

export default defineRemarks<typeof statement>(remarks)
