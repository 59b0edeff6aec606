import { useEffect, useRef, useState } from 'preact/hooks'
import { loadRemarks } from '../../src/calculators/browser.ts'
import type { Results } from '../../src/machine/cells.ts'
import type { Remark } from '../../src/machine/remark.ts'
import { remarksOn } from '../../src/machine/evaluate.ts'
import { PAUSE } from '../../src/drawing/useFollowed.ts'
import { useSettled } from '../../src/drawing/useSettled.ts'
import type { CalculatorState } from './useCalculator.ts'

const UNREAD: readonly Remark[] = [
  {
    kind: 'limit',
    text: 'What these numbers mean could not be loaded. Load the page again to read it.',
  },
]

/** What to measure first, worked out only once a reader says "I don't know". */
async function decides(
  { definition, evaluation, given, bikes, say }: CalculatorState,
  results: Results,
): Promise<readonly Remark[]> {
  // what is worked out beside the page is not worked out here once more
  if (evaluation.unknown.length === 0 || definition.away) return []
  const { decidingRemark } = await import('../../src/machine/decidingRemark.ts')
  const remark = decidingRemark(definition, given, results, { bikes, choice: say.choice }, say)
  return remark === null ? [] : [remark]
}

async function read(state: CalculatorState): Promise<readonly Remark[]> {
  const { definition, evaluation, say } = state
  if (evaluation.now === null) return []
  try {
    const remarks = remarksOn(definition, await loadRemarks(definition.id), evaluation, say)
    return [...remarks, ...(await decides(state, evaluation.now.output))]
  } catch {
    return UNREAD
  }
}

/** What the numbers mean, in words. The first words came with the page; later ones follow once the numbers stand still. */
export function useRemarks(state: CalculatorState, start: readonly Remark[]): readonly Remark[] {
  const [told, setTold] = useState(start)
  const first = useRef(state.evaluation)
  const settled = useSettled(state.evaluation, { start: state.evaluation, pause: PAUSE })
  useEffect(() => {
    if (settled === first.current) return
    let overtaken = false
    void read({ ...state, evaluation: settled }).then((remarks) => overtaken || setTold(remarks))
    return () => {
      overtaken = true
    }
  }, [settled])
  return state.evaluation.now === null ? [] : told
}
