import { defineRemarks, type Remark, type RemarkContext } from '../../machine/remark.ts'
import { estimate } from '../../units/interval.ts'
import type statement from './statement.ts'

type Context = RemarkContext<typeof statement>

/** A share that moves by five points is one that a rider feels at the rear first (common practice, no source). */
const SHARE_THAT_MATTERS = 0.05

const numbersOf = ({
  frontLoad,
  rearLoad,
  frontShare,
}: Context['output']): Record<'frontLoad' | 'rearLoad' | 'frontShare', number> => ({
  frontLoad: estimate(frontLoad) ?? 0,
  rearLoad: estimate(rearLoad) ?? 0,
  frontShare: estimate(frontShare) ?? 0,
})

/** What the load aboard does to the wheels, and how to weigh it. */
function remarks({ input, output, before, say }: Context): readonly Remark[] {
  const list: Remark[] = []
  const now = numbersOf(output)
  const added = input.rider + input.passenger + input.luggage
  if (before && added > 0) {
    const was = numbersOf(before.output)
    const [front, rear] = [now.frontLoad - was.frontLoad, now.rearLoad - was.rearLoad]
    const share = front / (front + rear)
    list.push({
      kind: 'reading',
      text: `Of the ${say.quantity(front + rear, 'kg load', 0)} put aboard, the front wheel takes ${say.quantity(front, 'kg load', 1)}, ${say.quantity(share, '%', 0)}. The front share goes from ${say.quantity(was.frontShare, '%', 1)} to ${say.quantity(now.frontShare, '%', 1)}.`,
    })
    if (was.frontShare - now.frontShare > SHARE_THAT_MATTERS) {
      list.push({
        kind: 'reading',
        text: `The share moved by more than five points. Choose rear preload first: the back has taken ${say.quantity(1 - share, '%', 0)} of what was put aboard.`,
      })
    }
  } else {
    list.push({
      kind: 'reading',
      text: `The bike alone stands with ${say.quantity(now.frontShare, '%', 1)} of its weight on the front wheel.`,
    })
  }
  if (now.frontLoad < 0)
    list.push({
      kind: 'limit',
      text: 'The front wheel would lift: so much mass behind the rear axle can’t be carried.',
    })
  list.push({
    kind: 'next',
    text: 'Weigh each wheel on its own scale, both scales level, rider aboard in riding posture. The maker’s plate gives the most that each axle and the whole bike may carry.',
  })
  if (input.rider > 0)
    list.push({
      kind: 'caution',
      caution: 'bike-held-upright-with-rider',
      text: 'For the weighing with a rider, one helper holds the bike upright.',
    })
  return list
}

export default defineRemarks<typeof statement>(remarks)
