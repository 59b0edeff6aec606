import { useEffect, useRef, useState } from 'preact/hooks'
import { loadRemarks } from '../../src/calculators/browser.ts'
import type { Remark } from '../../src/calculators/define.ts'
import { remarksOn } from '../../src/calculators/evaluate.ts'
import type { CalculatorState } from './useCalculator.ts'

/** How long the numbers stand still before they are read out in words [ms]: less than a pause is felt, more than a slider's steps are apart. */
const PAUSE = 100

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
  const { evaluation } = state
  const first = useRef(evaluation)
  useEffect(() => {
    if (evaluation === first.current) return
    first.current = null as never
    let overtaken = false
    const later = setTimeout(() => void read(state).then((remarks) => overtaken || setTold(remarks)), PAUSE)
    return () => {
      overtaken = true
      clearTimeout(later)
    }
  }, [evaluation])
  return evaluation.now === null ? [] : told
}
