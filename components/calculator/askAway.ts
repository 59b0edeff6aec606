import { lastAlone } from '../../src/machine/away.ts'
import type { Answer, Answerer, Question } from '../../src/machine/away.ts'
import type { Evaluation } from '../../src/machine/evaluate.ts'
import type { Away } from '../../src/machine/work.ts'

/** Told the evaluation, and whether a better one follows. */
type Tell = (evaluation: Evaluation, more: boolean) => void
/** Asks, and gives back what drops the question: its answer is then never told. */
type Asker = (asked: Omit<Question, 'number'>, tell: Tell) => () => void

const askers = new WeakMap<Away, Asker>()

/** The one asker of a calculator on a page, whose worker starts with the first question. */
export function askerOf(away: Away): Asker {
  const asker = askers.get(away) ?? newAsker(away)
  askers.set(away, asker)
  return asker
}

function newAsker(away: Away): Asker {
  const waiting = new Map<number, Tell>()
  let asked = 0
  let last: Question | null = null
  let post: ((question: Question) => void) | null = null
  const take = ({ number, evaluation, more = false }: Answer): void => {
    waiting.get(number)?.(evaluation, more)
    if (!more) waiting.delete(number)
  }
  const workHere = (): void => {
    post = onThisThread(away, take)
    if (last !== null && waiting.has(last.number)) post(last)
  }
  return (state, tell) => {
    last = { ...state, number: ++asked }
    waiting.set(last.number, tell)
    post ??= inWorker(away, take, workHere) ?? onThisThread(away, take)
    post(last)
    const { number } = last
    return () => waiting.delete(number)
  }
}

/** Asks a worker; null where none can be started. `failed` is called where its script cannot be loaded or fails. */
function inWorker(
  away: Away,
  take: (answer: Answer) => void,
  failed: () => void,
): ((question: Question) => void) | null {
  if (typeof Worker === 'undefined') return null
  try {
    const worker = away.worker()
    worker.addEventListener('message', ({ data }: MessageEvent<Answer>) => take(data))
    worker.addEventListener('error', failed)
    return (question) => worker.postMessage(question)
  } catch {
    return null
  }
}

/** Works on the page's own thread, between its frames. */
function onThisThread(away: Away, take: (answer: Answer) => void): (question: Question) => void {
  const ready = away
    .here()
    .then(({ default: answer }) => lastAlone(answer as Answerer, take, (call) => setTimeout(call)))
  return (question) => void ready.then((ask) => ask(question))
}
