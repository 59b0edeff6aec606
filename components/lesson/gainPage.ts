import { FORMS, formOf, rightOf } from '../../src/lesson/classTest.ts'
import type { Form, FormNumber } from '../../src/lesson/classTest.ts'
import type { TestQuestion } from '../../src/lesson/schema.ts'
import { gainOf } from '../../src/lesson/gain.ts'
import type { Gain } from '../../src/lesson/gain.ts'
import { readAnswers } from '../../src/lesson/readAnswers.ts'
import { tellGain } from '../../src/lesson/tellGain.ts'
import { item, onText } from './textForm.ts'

/* The page on which the tests before and after are scored: in the browser, nothing sent. */

const form = document.querySelector<HTMLFormElement>('[data-answers]')
const result = document.querySelector<HTMLElement>('[data-gain-result]')

function showItems(body: HTMLElement, questions: readonly TestQuestion[], { items }: Gain): void {
  const rows = items.map((moved, at) => {
    const row = document.createElement('tr')
    const head = item('th', questions[at]!.about)
    head.setAttribute('scope', 'row')
    const { gained, lost, otherWrong, stayedRight, stayedWrong } = moved
    const counts = [gained, lost, otherWrong, stayedRight, stayedWrong]
    row.append(head, ...counts.map((count) => item('td', String(count))))
    return row
  })
  body.replaceChildren(...rows)
}

if (form && result) {
  const questions = JSON.parse(form.dataset['answers']!) as TestQuestion[]
  const forms = Object.fromEntries(
    FORMS.map((number) => [number, formOf(questions, number)]),
  ) as Record<FormNumber, Form>
  onText(form, (text) => {
    const read = readAnswers(text, forms)
    if ('problems' in read) {
      result.hidden = true
      return read.problems
    }
    const gain = gainOf(read.sittings, questions.map(rightOf))
    result
      .querySelector('[data-gain-says]')!
      .replaceChildren(...tellGain(gain).map((told) => item('li', told)))
    showItems(result.querySelector<HTMLElement>('[data-gain-items]')!, questions, gain)
    result.hidden = false
    return []
  })
}
