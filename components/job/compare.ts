import { fitOf, jointWithin } from '../../src/jobs/fits.ts'
import type { Within } from '../../src/jobs/fits.ts'
import { reasonsFor } from '../../src/jobs/reasons.ts'
import type { SagFacts } from '../../src/jobs/reasons.ts'
import type { Book } from '../../src/record/book.ts'
import { takenMean } from '../../src/record/carry.ts'
import type { Taken } from '../../src/record/carry.ts'
import { meanOf } from '../../src/record/reading.ts'
import { entriesOf } from '../../src/record/sheet.ts'
import { workedGiven } from '../../src/record/worked.ts'
import type { UnitChoice } from '../../src/units/choice.ts'
import { isInterval } from '../../src/units/interval.ts'
import { createSay } from '../../src/units/say.ts'
import { withPlusMinus, workedNumbers } from '../procedure/workPanels.ts'
import type { WorkData } from '../procedure/workPanels.ts'

/* Before, worked out and after, side by side; and where after is not what was worked out, what to look at first. */

/** What is set side by side. */
export interface ComparedRow {
  id: string
  label: string
  before: string
  after: string
  output: string
  forecast?: string | undefined
  within?: string | undefined
}

const PAUSE = 700
const MM = 1000

const meanAnywhere = (id: string, all: readonly Taken[], book: Book): number | undefined => {
  for (const taken of [...all].reverse()) {
    const mean = taken.spec.id === id ? takenMean(book, taken) : null
    if (mean !== null) return mean
  }
  return undefined
}

async function sagOf(id: string, output: string, context: Context): Promise<Within | null> {
  const { all, data, book, choice } = context
  const spec = data.specs.find((each) => each.id === id)
  const statement = spec && data.statements[spec.calculator]
  if (!spec || !statement) return null
  const { given, missing, refused } = workedGiven(spec, statement, '', all, book)
  if (missing.length > 0 || refused.length > 0) return null
  const number = (await workedNumbers(spec, statement, given, choice))[output]
  if (!number) return null
  const { value } = number
  if (!isInterval(value)) return { value, within: 0 }
  const middle = value.value ?? (value.low + value.high) / 2
  return { value: middle, within: (value.high - value.low) / 2 }
}

/** The largest spread of readings after the work, three of a kind [mm]. */
function spreadAfter(all: readonly Taken[], book: Book): number | undefined {
  const spreads = all
    .filter(({ spec }) => /^rider.*After$|^extendedAfter$/.test(spec.id))
    .flatMap(({ procedure, spec }) => {
      const mean = meanOf(spec, entriesOf(book, procedure, spec.id))
      return mean && mean.count > 1 ? [mean.spread] : []
    })
  return spreads.length > 0 ? Math.max(...spreads) : undefined
}

function factsOf(predicted: number, all: readonly Taken[], book: Book): SagFacts {
  const read = (id: string): number | undefined => meanAnywhere(id, all, book)
  const [up, down] = [read('riderSettledUpAfter'), read('riderSettledDownAfter')]
  return {
    predicted,
    band: up !== undefined && down !== undefined ? Math.max(0, up - down) : undefined,
    spread: spreadAfter(all, book),
    rate: read('rateChosen') ?? read('rateFitted'),
    turnsSet: read('frontPreloadTurnsAfter'),
    turnsWanted: read('adjusterAim'),
    perTurn: read('preloadPerTurn'),
    spacerLeft: read('spacerLengthCut'),
    spacerRight: read('spacerLengthCutRight'),
    spacerWanted: read('spacerLength'),
  }
}

const CAUSES = {
  friction: 'Friction',
  adjuster: 'A turned adjuster',
  spacer: 'A spacer or a washer',
  label: 'Another spring than you think',
  load: 'Another load',
  reading: 'A reading',
  air: 'The air above the oil',
  tyre: 'Another tyre',
} as const

const element = (tag: string, text: string): HTMLElement =>
  Object.assign(document.createElement(tag), { textContent: text })

/** What a comparison works with. */
interface Context {
  all: readonly Taken[]
  data: WorkData
  book: Book
  choice: UnitChoice
}
type Say = ReturnType<typeof createSay>

const spanOf = (say: Say, { value, within }: Within): string =>
  withPlusMinus(say, {
    value: within > 0 ? { value, low: value - within, high: value + within } : value,
    unit: 'mm',
    digits: 1,
  })

function reasonList(say: Say, facts: SagFacts): HTMLElement {
  const list = document.createElement('ol')
  list.append(
    ...reasonsFor(facts).map((reason) => {
      const most = say.quantity(reason.explains / MM, 'mm', 1)
      const item = element('li', ` ${reason.look}`)
      item.dataset['reason'] = reason.cause
      const from = reason.fromSheet ? '' : ', as is common'
      item.prepend(element('b', `${CAUSES[reason.cause]}, up to ${most}${from}.`))
      return item
    }),
  )
  return list
}

/** One row [SI]: what was read before, what was worked out, what was read after. */
interface Sides {
  before: Within | null
  predicted: Within | null
  after: Within | null
  /** whether a ± was written for what was worked out */
  stated: boolean
}

async function sidesOf(row: ComparedRow, context: Context): Promise<Sides> {
  const [before, after] = await Promise.all(
    [row.before, row.after].map((id) => sagOf(id, row.output, context)),
  )
  const read = (id: string | undefined): number | undefined =>
    id === undefined ? undefined : meanAnywhere(id, context.all, context.book)
  const [mean, within] = [read(row.forecast), read(row.within)]
  return {
    before: before ?? null,
    after: after ?? null,
    predicted: mean === undefined ? null : { value: mean / MM, within: (within ?? 0) / MM },
    stated: within !== undefined,
  }
}

/** Whether a sag is as worked out; if not, where to look, what explains most first. */
function verdict(
  label: string,
  { after, predicted, stated }: Sides,
  context: Context,
): HTMLElement[] {
  if (!after || !predicted) return []
  const say = createSay(context.choice)
  const fit = fitOf(after, predicted)
  const off = say.quantity(Math.abs(after.value - predicted.value), 'mm', 1)
  const joint = say.quantity(jointWithin(after, predicted), 'mm', 1)
  const bare = stated
    ? ''
    : ' The ± is that of the readings alone, because none was written for what was worked out.'
  if (fit === 'fits')
    return [
      element(
        'p',
        `${label}: as worked out. The two differ by ${off}, and their joint ± is ${joint}.${bare}`,
      ),
    ]
  return [
    element(
      'p',
      `${label}: not as worked out. It sags ${off} ${fit}, and the joint ± is ${joint}.${bare} Look in this order, what explains most first, and change nothing before you know:`,
    ),
    reasonList(say, factsOf(predicted.value * MM, context.all, context.book)),
  ]
}

function fillRow({ id }: ComparedRow, sides: Sides, say: Say): void {
  const { before, predicted, after } = sides
  const off =
    after && predicted
      ? { value: after.value - predicted.value, within: jointWithin(after, predicted) }
      : null
  // the row stands at the gate and on the hand-over sheet
  const lines = [...document.querySelectorAll(`[data-compare-row="${id}"], [data-handed="${id}"]`)]
  for (const [side, number] of Object.entries({ before, predicted, after, off }))
    for (const line of lines) {
      const cell = line.querySelector<HTMLElement>(`[data-side="${side}"]`)
      if (!cell) continue
      cell.textContent = number ? spanOf(say, number) : ''
      if (number) cell.dataset['si'] = String(number.value)
      else delete cell.dataset['si']
    }
}

/** Fills the table of one gate, and says what to look at where a sag is not as worked out. */
export function comparePanel(
  root: HTMLElement,
  rows: readonly ComparedRow[],
  all: readonly Taken[],
  data: WorkData,
  units: () => UnitChoice,
): (book: Book) => void {
  const panel = root.querySelector<HTMLElement>('[data-compare]')
  const says = panel?.querySelector<HTMLElement>('[data-compare-says]')
  if (!panel || !says) return () => undefined
  let timer = 0
  return (book) => {
    clearTimeout(timer)
    const mine = window.setTimeout(() => {
      const context = { all, data, book, choice: units() }
      void Promise.all(rows.map((row) => sidesOf(row, context))).then((found) => {
        // what was written meanwhile has a timer of its own, and the last word
        if (timer !== mine) return
        const say = createSay(context.choice)
        for (const [index, row] of rows.entries()) fillRow(row, found[index]!, say)
        says.replaceChildren(
          ...rows.flatMap((row, index) => verdict(row.label, found[index]!, context)),
        )
      })
    }, PAUSE)
    timer = mine
  }
}
