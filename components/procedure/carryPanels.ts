import { loadRemarks, loadWork } from '../../src/calculators/browser.ts'
import type { CardStatement } from '../../src/machine/statement.ts'
import { defaultsOf, evaluate } from '../../src/machine/evaluate.ts'
import { encodeLink } from '../../src/machine/writeLink.ts'
import { calculatorOf } from '../../src/machine/calculator.ts'
import type { Evaluation } from '../../src/machine/evaluate.ts'
import type { UnitChoice } from '../../src/units/choice.ts'
import type { Book } from '../../src/record/book.ts'
import { carry } from '../../src/record/carry.ts'
import type { Carrying, Taken } from '../../src/record/carry.ts'
import { told } from '../../src/record/told.ts'
import { showResults } from './results.ts'

interface Panel {
  statement: CardStatement
  link: HTMLAnchorElement
  count: HTMLElement | null
  said: HTMLElement | null
  results: HTMLElement | null
  timer: number
}

// a status message after typing has paused: a screen reader is not to read every keystroke's result
const PAUSE = 600

const needsBike = (statement: CardStatement): boolean =>
  Object.values(statement.inputs).some(({ kind }) => kind === 'bike')

function countText({ carried, refused }: Carrying): string {
  const values = `${carried.length} ${carried.length === 1 ? 'value' : 'values'}`
  const more = refused.length > 0 ? `. Not carried: ${refused.join('; ')}` : ''
  return carried.length === 0
    ? ` opens with its usual values until you write readings${more}`
    : ` opens with ${values} from your readings; the rest are its usual ones${more}`
}

/** The query that opens a calculator with readings alone: what it leaves out the calculator shows as its example's, not as the reader's. */
function carryQuery(statement: CardStatement, { given }: Carrying): string {
  const named = Object.keys(given)
  if (named.length === 0) return ''
  return `?${encodeLink(statement, { ...defaultsOf(statement), ...given }, null, { named })}`
}

interface Worked {
  lines: string[]
  evaluation: Evaluation | null
}

async function worked(
  statement: CardStatement,
  carrying: Carrying,
  choice: UnitChoice,
): Promise<Worked> {
  if (!carrying.complete || needsBike(statement)) return { lines: [], evaluation: null }
  const [work, remarks] = await Promise.all([loadWork(statement.id), loadRemarks(statement.id)])
  const calculator = { ...calculatorOf(statement, work), remarks }
  const usual = defaultsOf(calculator)
  const evaluation = evaluate(calculator, { ...usual, ...carrying.given }, { bikes: {}, choice })
  return { lines: told(evaluation), evaluation }
}

/** The links that take readings to a calculator, and what the readings come to, told in place. */
export function carryPanels(
  root: HTMLElement,
  procedure: string,
  all: readonly Taken[],
  base: string,
  units: () => UnitChoice,
): (book: Book) => void {
  const panels: Panel[] = [...root.querySelectorAll<HTMLElement>('[data-carry]')].map(
    (element) => ({
      statement: JSON.parse(element.dataset['statement'] ?? '') as CardStatement,
      link: element.querySelector<HTMLAnchorElement>('[data-carry-link]')!,
      count: element.querySelector<HTMLElement>('[data-carry-count]'),
      said: element.querySelector<HTMLElement>('[data-carry-said]'),
      results: element.querySelector<HTMLElement>('[data-results]'),
      timer: 0,
    }),
  )
  const tell = async (panel: Panel, carrying: Carrying): Promise<void> => {
    const { timer } = panel
    const { lines, evaluation } = await worked(panel.statement, carrying, units())
    // what was written meanwhile has a timer of its own, and the last word
    if (panel.timer !== timer) return
    panel.said?.replaceChildren(...lines.map(paragraph))
    showResults(panel.results, panel.statement, evaluation, units())
  }
  const show = (panel: Panel, book: Book): void => {
    const { statement } = panel
    const carrying = carry(statement, procedure, all, book)
    panel.link.href = `${base}calculators/${statement.id}/${carryQuery(statement, carrying)}`
    if (panel.count) panel.count.textContent = countText(carrying)
    clearTimeout(panel.timer)
    panel.timer = window.setTimeout(() => void tell(panel, carrying), PAUSE)
  }
  return (book) => {
    for (const panel of panels) show(panel, book)
  }
}

function paragraph(text: string): HTMLElement {
  const element = document.createElement('span')
  element.textContent = `${text} `
  return element
}
