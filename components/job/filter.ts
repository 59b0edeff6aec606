import { answersIn, applies, queryWith, UNKNOWN } from '../../src/jobs/applies.ts'
import type { Answers, When } from '../../src/jobs/applies.ts'
import { outlineSays, partSays, peopleFor, visitSays } from '../../src/jobs/sum.ts'
import type { Timed } from '../../src/jobs/sum.ts'

/* Lays out a job card for the answers: what does not apply is hidden, what is left is numbered and counted. */

const all = (root: ParentNode, selector: string): HTMLElement[] => [
  ...root.querySelectorAll<HTMLElement>(selector),
]
const whenOf = (element: HTMLElement): When | undefined =>
  element.dataset['when'] === undefined ? undefined : (JSON.parse(element.dataset['when']) as When)

/** A step as its element says it. */
const timed = (step: HTMLElement): Timed => {
  const [least = 0, most = 0] = step.dataset['minutes']?.split(' ').map(Number) ?? []
  return { minutes: [least, most], people: Number(step.dataset['people'] ?? 1) }
}

const shownSteps = (root: ParentNode): HTMLElement[] => all(root, '[data-step]:not([hidden])')

function hideByAnswers(root: HTMLElement, answers: Answers): void {
  for (const element of all(root, '[data-part], [data-step], [data-danger]'))
    element.hidden = !applies(whenOf(element), answers)
  // a condition that the answers settle need not be read any more
  for (const only of all(root, '[data-step] .only')) {
    const asked = Object.keys(whenOf(only.closest<HTMLElement>('[data-step]')!) ?? {})
    only.hidden = asked.every((ask) => (answers[ask] ?? UNKNOWN) !== UNKNOWN)
  }
  for (const list of all(root, '[data-procedure]')) list.hidden = shownSteps(list).length === 0
  for (const part of all(root, '[data-part]')) {
    const empty = shownSteps(part).length === 0 && !part.querySelector('[data-gate], table')
    if (empty) part.hidden = true
    // what lies in a hidden part is hidden itself, so that nothing counts it
    if (part.hidden) for (const step of all(part, '[data-step]')) step.hidden = true
    for (const gate of all(part, '[data-gate]')) gate.hidden = part.hidden
  }
}

function number(root: HTMLElement): void {
  const parts = all(root, '[data-part]:not([hidden])')
  for (const [index, part] of parts.entries()) {
    const steps = shownSteps(part)
    const sum = steps.map(timed)
    const title = part.querySelector('[data-part-number]')
    if (title) title.textContent = String(index + 1)
    const says = part.querySelector('[data-part-says]')
    if (says) says.textContent = partSays(sum)
    for (const [place, step] of steps.entries()) {
      const label = step.querySelector('[data-number]')
      if (label) label.textContent = `${index + 1}.${place + 1}`
    }
    const line = root.querySelector<HTMLElement>(`[data-outline="${part.dataset['part']}"]`)
    const count = line?.querySelector('[data-outline-says]')
    const place = line?.querySelector('[data-part-number]')
    if (count) count.textContent = outlineSays(sum)
    if (place) place.textContent = String(index + 1)
  }
}

function sumVisits(root: HTMLElement): void {
  for (const part of all(root, '[data-part]')) {
    const line = root.querySelector<HTMLElement>(`[data-outline="${part.dataset['part']}"]`)
    if (line) line.hidden = part.hidden
  }
  for (const visit of all(root, '[data-outline-visit]')) {
    const id = visit.dataset['outlineVisit']
    const steps = shownSteps(root).filter(
      (step) => step.closest<HTMLElement>('[data-part]')?.dataset['visit'] === id,
    )
    visit.hidden = !root.querySelector(`[data-part][data-visit="${id}"]:not([hidden])`)
    const says = visit.querySelector('[data-visit-says]')
    if (says) says.textContent = visitSays(steps.map(timed))
  }
}

/**
 * For the short card: a danger that an earlier step of the part in sight has told in the same words is marked as told, and a step with nothing else
 * of weight is left out.
 */
function markTold(root: HTMLElement): void {
  for (const part of all(root, '[data-part]:not([hidden])')) {
    const told = new Set<string>()
    for (const step of shownSteps(part)) {
      const fresh = all(step, '[data-danger]:not([hidden])').filter((line) => {
        const text = `${line.dataset['danger'] ?? ''} ${line.textContent}`
        line.toggleAttribute('data-told', told.has(text))
        return told.size < told.add(text).size
      })
      const written = step.querySelector('[data-reading], [data-kept]') !== null
      step.classList.toggle('weighty', written || fresh.length > 0)
    }
  }
}

/** Cautions that no step in sight points to are left out of the list. */
function hideCautions(root: HTMLElement): void {
  const told = new Set(
    shownSteps(root).flatMap((step) =>
      all(step, '[data-danger]:not([hidden])').map((line) => line.dataset['danger']),
    ),
  )
  for (const caution of all(root, '[data-card-caution]'))
    caution.hidden = !told.has(caution.dataset['cardCaution'])
}

function tellAnswers(root: HTMLElement, form: HTMLFormElement): void {
  const chosen = all(form, 'input:checked') as HTMLInputElement[]
  const stops = chosen.flatMap(({ dataset }) => (dataset['stop'] ? [dataset['stop']] : []))
  const box = root.querySelector<HTMLElement>('[data-job-stop]')
  if (box) {
    box.hidden = stops.length === 0
    box.replaceChildren(
      ...stops.map((text) => Object.assign(document.createElement('p'), { textContent: text })),
    )
  }
  const line = root.querySelector('[data-answers]')
  if (line)
    line.textContent =
      chosen.length === 0
        ? 'every answer: nothing was left out'
        : chosen
            .map((input) => {
              const ask = input.closest('fieldset')?.querySelector('legend')?.textContent ?? ''
              const option = input.nextElementSibling?.firstChild?.textContent?.trim() ?? ''
              return `${ask} ${option}.`
            })
            .join(' ')
}

/** Parts that this many people can't do are marked, and say how many it takes. */
function tellPeople(root: HTMLElement, answers: Answers): void {
  const here = { one: 1, two: 2 }[answers['people'] ?? ''] ?? Infinity
  for (const part of all(root, '[data-part]')) {
    const people = peopleFor(shownSteps(part).map(timed))
    part.toggleAttribute('data-short-handed', people > here)
    const says = part.querySelector('[data-part-says]')
    if (says && people > here) says.textContent += `. Not without ${people}: wait for help`
  }
}

/** The questions of a card as its form holds them. */
export interface Asked {
  answers(): Answers
  /** answers what nobody has answered yet, as the job was left */
  restore(answers: Answers): void
}

/** Keeps form, address and card together; calls `shown` when the card has changed, and `answered` when somebody answered. */
export function filter(
  root: HTMLElement,
  form: HTMLFormElement,
  { shown, answered }: { shown: () => void; answered: () => void },
): Asked {
  const inputs = all(form, 'input[type="radio"]') as HTMLInputElement[]
  const offered = Object.fromEntries(
    [...new Set(inputs.map(({ name }) => name))].map((name) => [
      name,
      inputs.filter((input) => input.name === name).map(({ value }) => value),
    ]),
  )
  const lay = (answers: Answers): void => {
    hideByAnswers(root, answers)
    number(root)
    sumVisits(root)
    hideCautions(root)
    markTold(root)
    tellAnswers(root, form)
    tellPeople(root, answers)
    shown()
  }
  const read = (): Answers =>
    Object.fromEntries(
      inputs.filter(({ checked }) => checked).map(({ name, value }) => [name, value]),
    )
  const put = (answers: Answers): void => {
    for (const input of inputs) input.checked = answers[input.name] === input.value
  }
  const fromAddress = (): void => {
    put(answersIn(new URLSearchParams(location.search), offered))
    lay(read())
  }
  const toAddress = (): void => {
    const query = queryWith(new URLSearchParams(location.search), offered, read()).toString()
    history.replaceState(null, '', `${location.pathname}${query && `?${query}`}${location.hash}`)
    lay(read())
  }
  const changed = (): void => {
    toAddress()
    answered()
  }
  form.addEventListener('change', changed)
  // the boxes are empty only after the event
  form.addEventListener('reset', () => setTimeout(changed))
  addEventListener('popstate', fromAddress)
  fromAddress()
  return {
    answers: read,
    restore(answers) {
      const kept = answersIn(new URLSearchParams({ ...answers }), offered)
      if (Object.keys(read()).length > 0 || Object.keys(kept).length === 0) return
      put(kept)
      toAddress()
    },
  }
}
