import { useEffect, useMemo, useRef, useState } from 'preact/hooks'
import type { Question } from '../../src/machine/away.ts'
import type { Calculator } from '../../src/machine/calculator.ts'
import { evaluate } from '../../src/machine/evaluate.ts'
import type { Evaluation } from '../../src/machine/evaluate.ts'
import type { Say } from '../../src/units/say.ts'
import { askerOf } from './askAway.ts'

const NOTHING: Evaluation = {
  now: null,
  before: null,
  change: {},
  changeShare: {},
  problems: {},
  refusal: null,
  unknown: [],
}

interface Evaluated {
  evaluation: Evaluation
  /** the evaluation is that of the values before */
  waiting: boolean
  /** the evaluation is the values' own, and a better one follows */
  looking: boolean
}

/** A state evaluated: at once, or beside the page, where the last evaluation stays until the next has come. */
export function useEvaluated(
  definition: Calculator,
  { given, held, bikes, choice }: Omit<Question, 'number'>,
  say: Say,
  opening: Evaluation | null,
): Evaluated {
  const { away } = definition
  const here = useMemo(
    () => (away ? null : evaluate(definition, given, { bikes, choice }, held, say)),
    [definition, given, held, say, bikes],
  )
  const [told, setTold] = useState<Evaluated>({
    evaluation: opening ?? NOTHING,
    waiting: false,
    looking: false,
  })
  const opened = useRef(opening !== null)
  useEffect(() => {
    if (away === undefined) return
    // the page came with the evaluation of the values that it opens with
    if (opened.current) {
      opened.current = false
      return
    }
    setTold(({ evaluation }) => ({ evaluation, waiting: true, looking: false }))
    return askerOf(away)({ given, held, bikes, choice }, (evaluation, looking) =>
      setTold({ evaluation, waiting: false, looking }),
    )
  }, [away, given, held, say, bikes])
  return here === null ? told : { evaluation: here, waiting: false, looking: false }
}
