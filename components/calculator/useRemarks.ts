import { useEffect, useRef, useState } from 'preact/hooks'
import { loadRemarks } from '../../src/calculators/browser.ts'
import type { Remark } from '../../src/calculators/define.ts'
import { remarksOn } from '../../src/calculators/evaluate.ts'
import { PAUSE } from '../figures/kit/useFollowed.ts'
import { useSettled } from '../figures/kit/useSettled.ts'
import type { CalculatorState } from './useCalculator.ts'

const UNREAD: readonly Remark[] = [{ kind: 'limit', text: 'What these numbers mean could not be loaded. Load the page again to read it.' }]

async function read({ definition, evaluation, say }: CalculatorState): Promise<readonly Remark[]> {
  if (evaluation.now === null) return []
  try {
    return remarksOn(await loadRemarks(definition.id), evaluation, say)
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
