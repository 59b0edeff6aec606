import stylesheet from './room.css?url'
import { h, render } from 'preact'
import { loadTopics, loadWorkHere } from '../../src/calculators/exercises.ts'
import { loadFigure } from '../../src/calculators/browser.ts'
import { calculatorOf } from '../../src/machine/calculator.ts'
import { loadUnitChoice } from '../../src/units/choiceStore.ts'
import { readPrediction, readShown } from './asked.ts'
import { Classroom } from './Classroom.tsx'

/* The room view: the page’s question alone. What the page said is taken out of it, so that no answer is there to be found before it is shown. */

/* A style sheet that the page asks for itself: the build would put an imported one into every page with a calculator. */
const link = document.createElement('link')
link.rel = 'stylesheet'
link.href = stylesheet
document.head.append(link)

const taken = document.createDocumentFragment()
taken.append(...document.body.childNodes)
document.querySelector('meta[name="description"]')?.remove()

const prediction = readPrediction(taken)
const shown = readShown(taken)
const root = document.createElement('div')
document.body.append(root)
document.body.classList.add('in-room')

if (shown !== null) {
  const [topics, work, Figure] = await Promise.all([
    loadTopics([shown.id]),
    loadWorkHere(shown.id),
    loadFigure(shown.id),
  ])
  const topic = topics[0]!
  render(
    h(Classroom, {
      topic,
      calculator: calculatorOf(topic.calculator, work),
      Figure,
      prediction,
      shown,
      choice: loadUnitChoice(),
    }),
    root,
  )
}
