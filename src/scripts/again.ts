/* What was missed, asked again: the page holds three questions of each chapter, and this script shows those that are due. */

import { readAnswers } from './answers.ts'
import { chapterOf, keepMissed, readMissed } from './missed.ts'

/** So many chapters after the one that was missed it is asked again, for the first, second and third time. */
const LATER = [2, 5, 10]

const list = document.querySelector<HTMLElement>('[data-again-orders]')!
const orders = JSON.parse(list.dataset['againOrders']!) as Record<string, number>
const sections = [...list.querySelectorAll<HTMLElement>('[data-again]')]
const status = document.querySelector<HTMLElement>('[data-again-status]')!
const acts = document.querySelector<HTMLElement>('[data-again-acts]')!

/** The furthest chapter in which anything was answered. */
const reached = Math.max(
  0,
  ...Object.keys(readAnswers()).map((address) => orders[chapterOf(address) ?? ''] ?? 0),
)
const last = Math.max(...Object.values(orders))

const isDue = (chapter: string, times: number): boolean =>
  reached === last || reached - (orders[chapter] ?? Infinity) >= (LATER[times] ?? Infinity)

function show(): void {
  const missed = readMissed()
  const due = Object.entries(missed).filter(([chapter, times]) => isDue(chapter, times))
  for (const section of sections) {
    const { again, stage } = section.dataset
    section.hidden = !due.some(([chapter, times]) => chapter === again && times === Number(stage))
  }
  const waiting = Object.keys(missed).length - due.length
  status.textContent =
    due.length > 0
      ? `${due.length === 1 ? 'One question is' : `${due.length} questions are`} due.`
      : waiting > 0
        ? `Nothing is due yet. ${waiting === 1 ? 'One chapter comes' : `${waiting} chapters come`} back as you read on.`
        : 'Nothing is due. What you get wrong in a chapter will come back here.'
  acts.hidden = Object.keys(missed).length === 0
  list.dataset['shown'] = ''
}

list.addEventListener('answered', (event) => {
  const section = (event.target as HTMLElement).closest<HTMLElement>('[data-again]')
  const chapter = section?.dataset['again']
  if (chapter === undefined || !(event instanceof CustomEvent) || event.detail !== true) return
  const { [chapter]: times = 0, ...others } = readMissed()
  keepMissed(times + 1 < LATER.length ? { ...others, [chapter]: times + 1 } : others)
})
document.querySelector('[data-again-clear]')!.addEventListener('click', () => {
  keepMissed({})
  show()
})
show()
