import { loadRemarks, loadWork } from '../../src/calculators/browser.ts'
import type { Statement } from '../../src/calculators/define.ts'
import { defaultsOf, evaluate } from '../../src/calculators/evaluate.ts'
import { encodeLink } from '../../src/calculators/link.ts'
import { createSay } from '../../src/calculators/say.ts'
import { calculatorOf } from '../../src/calculators/statement.ts'
import type { UnitChoice } from '../../src/calculators/unit-choice.ts'
import type { Book } from '../../src/record/book.ts'
import { carry } from '../../src/record/carry.ts'
import type { Carrying, Taken } from '../../src/record/carry.ts'
import { told } from '../../src/record/told.ts'

interface Panel {
  statement: Statement
  link: HTMLAnchorElement
  count: HTMLElement | null
  said: HTMLElement | null
  timer: number
}

// a status message after typing has paused: a screen reader is not to read every keystroke's result
const PAUSE = 600

const needsBike = (statement: Statement): boolean => Object.values(statement.inputs).some(({ kind }) => kind === 'bike')

function countText({ carried, refused }: Carrying): string {
  const values = `${carried.length} ${carried.length === 1 ? 'value' : 'values'}`
  const more = refused.length > 0 ? `. Not carried: ${refused.join('; ')}` : ''
  return carried.length === 0
    ? ` opens with its usual values until you write readings${more}`
    : ` opens with ${values} from your readings; the rest are its usual ones${more}`
}

async function lines(statement: Statement, carrying: Carrying, choice: UnitChoice): Promise<string[]> {
  if (!carrying.complete || needsBike(statement)) return []
  const [work, remarks] = await Promise.all([loadWork(statement.id), loadRemarks(statement.id)])
  const calculator = { ...calculatorOf(statement, work), remarks }
  const usual = defaultsOf(calculator)
  const evaluation = evaluate(calculator, { ...usual, ...carrying.given }, { bikes: {}, choice })
  return told(calculator, evaluation, carrying.given, usual, createSay(choice))
}

/** The links that take readings to a calculator, and what the readings come to, told in place. */
export function carryPanels(root: HTMLElement, procedure: string, all: readonly Taken[], base: string, units: () => UnitChoice): (book: Book) => void {
  const panels: Panel[] = [...root.querySelectorAll<HTMLElement>('[data-carry]')].map((element) => ({
    statement: JSON.parse(element.dataset['statement'] ?? '') as Statement,
    link: element.querySelector<HTMLAnchorElement>('[data-carry-link]')!,
    count: element.querySelector<HTMLElement>('[data-carry-count]'),
    said: element.querySelector<HTMLElement>('[data-carry-said]'),
    timer: 0,
  }))
  const tell = async (panel: Panel, carrying: Carrying): Promise<void> => {
    const { timer } = panel
    const told = await lines(panel.statement, carrying, units())
    // what was written meanwhile has a timer of its own, and the last word
    if (panel.timer === timer) panel.said?.replaceChildren(...told.map(paragraph))
  }
  const show = (panel: Panel, book: Book): void => {
    const { statement } = panel
    const carrying = carry(statement, procedure, all, book)
    panel.link.href = `${base}calculators/${statement.id}/?${encodeLink(statement, { ...defaultsOf(statement), ...carrying.given })}`
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
