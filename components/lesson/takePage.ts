import type { FormNumber } from '../../src/lesson/classTest.ts'
import { codeOf } from '../../src/lesson/readAnswers.ts'

/* A learner's form on a screen: the letters chosen, as a code to read off. */

const form = document.querySelector<HTMLFormElement>('[data-taking]')
if (form) {
  const number = Number(form.dataset['taking']) as FormNumber
  const asked = form.querySelectorAll('[data-test-item]').length
  const show = (): void => {
    const data = new FormData(form)
    const letters = Array.from({ length: asked }, (_, at) => {
      const letter = data.get(`answer-${at}`)
      return typeof letter === 'string' ? letter : null
    })
    form.querySelector('[data-test-code]')!.textContent = codeOf(number, letters)
  }
  form.addEventListener('change', show)
  form.addEventListener('submit', (event) => event.preventDefault())
  show()
}
