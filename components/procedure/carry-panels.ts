import type { Definition } from '../../src/calculators/define.ts'
import { defaultsOf, evaluate } from '../../src/calculators/evaluate.ts'
import { loadCalculator } from '../../src/calculators/index.ts'
import { encodeLink } from '../../src/calculators/link.ts'
import { createSay } from '../../src/calculators/say.ts'
import type { UnitChoice } from '../../src/calculators/unit-choice.ts'
import type { Book } from '../../src/record/book.ts'
import { carry } from '../../src/record/carry.ts'
import type { Carrying, Taken } from '../../src/record/carry.ts'
import { told } from '../../src/record/told.ts'

interface Panel {
  id: string
  link: HTMLAnchorElement
  count: HTMLElement | null
  said: HTMLElement | null
  timer: number
}

// a status message after typing has paused: a screen reader is not to read every keystroke's result
const PAUSE = 600

const needsBike = (definition: Definition): boolean => Object.values(definition.inputs).some(({ kind }) => kind === 'bike')

function countText({ carried, refused }: Carrying): string {
  const values = `${carried.length} ${carried.length === 1 ? 'value' : 'values'}`
  const more = refused.length > 0 ? `. Not carried: ${refused.join('; ')}` : ''
  return carried.length === 0
    ? ` opens with its usual values until you write readings${more}`
    : ` opens with ${values} from your readings; the rest are its usual ones${more}`
}

function lines(definition: Definition, carrying: Carrying, choice: UnitChoice): string[] {
  if (!carrying.complete || needsBike(definition)) return []
  const usual = defaultsOf(definition)
  const evaluation = evaluate(definition, { ...usual, ...carrying.given }, { bikes: {}, choice })
  return told(definition, evaluation, carrying.given, usual, createSay(choice))
}

/** The links that take readings to a calculator, and what the readings come to, told in place. */
export function carryPanels(root: HTMLElement, procedure: string, all: readonly Taken[], base: string, units: () => UnitChoice): (book: Book) => void {
  const panels: Panel[] = [...root.querySelectorAll<HTMLElement>('[data-carry]')].map((element) => ({
    id: element.dataset['carry'] ?? '',
    link: element.querySelector<HTMLAnchorElement>('[data-carry-link]')!,
    count: element.querySelector<HTMLElement>('[data-carry-count]'),
    said: element.querySelector<HTMLElement>('[data-carry-said]'),
    timer: 0,
  }))
  const show = async (panel: Panel, book: Book): Promise<void> => {
    const definition = await loadCalculator(panel.id)
    const carrying = carry(definition, procedure, all, book)
    panel.link.href = `${base}calculators/${panel.id}/?${encodeLink(definition, { ...defaultsOf(definition), ...carrying.given })}`
    if (panel.count) panel.count.textContent = countText(carrying)
    clearTimeout(panel.timer)
    panel.timer = window.setTimeout(() => panel.said?.replaceChildren(...lines(definition, carrying, units()).map(paragraph)), PAUSE)
  }
  return (book) => {
    for (const panel of panels) void show(panel, book)
  }
}

function paragraph(text: string): HTMLElement {
  const element = document.createElement('span')
  element.textContent = `${text} `
  return element
}
