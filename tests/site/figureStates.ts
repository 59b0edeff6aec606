import { h } from 'preact'
import { render } from 'preact-render-to-string'
import { loadFigure } from '../../src/calculators/browser.ts'
import type { Staged } from '../../src/drawing/View.tsx'
import type { LooseFigureProps } from '../../src/drawing/props.ts'
import { loadStill, stillNames } from '../../src/drawing/stills.ts'
import type { WholeCalculator } from '../../src/machine/calculator.ts'
import type { Given } from '../../src/machine/given.ts'
import type { Input } from '../../src/machine/statement.ts'
import { defaultsOf, evaluate, isAsked } from '../../src/machine/evaluate.ts'
import { calculatorIds, loadCalculator } from '../../src/calculators/index.ts'
import { createSay } from '../../src/units/say.ts'
import { IMPERIAL, METRIC } from '../../src/units/choice.ts'
import { bikes } from '../calculators/bikes.ts'

/** One drawing to lay out: markup as a page has it, and where it came from. */
export interface Drawn {
  name: string
  markup: string
}

const computable = (definition: WholeCalculator, given: Given): boolean =>
  evaluate(definition, given, { bikes }).now !== null

/** An input's value at one end: a quantity's range, a choice's or a bike's first or last. */
function endOf(input: Input, end: 'least' | 'most'): Given[string] | undefined {
  const pick = <T>(all: readonly T[]): T | undefined => (end === 'least' ? all[0] : all.at(-1))
  if (input.kind === 'quantity') return input.range[end === 'least' ? 0 : 1]
  if (input.kind === 'choice') return pick(Object.keys(input.options))
  if (input.kind === 'bike') return pick(Object.keys(bikes))
  return undefined
}

/** The defaults with every input at its least (or most): all at once where that can be computed, else one after the other, as far as the others allow, in the order of the definition. */
function extreme(definition: WholeCalculator, end: 'least' | 'most'): Given {
  const move = (given: Given, [id, input]: readonly [string, Input]): Given => {
    const value = isAsked(input, given) ? endOf(input, end) : undefined
    return value === undefined ? given : { ...given, [id]: value }
  }
  const opening = defaultsOf(definition)
  const inputs = Object.entries(definition.inputs)
  const whole = inputs.reduce(move, opening)
  if (computable(definition, whole)) return whole
  return inputs.reduce((given, each) => {
    const moved = move(given, each)
    return moved !== given && computable(definition, moved) ? moved : given
  }, opening)
}

/** A calculator's figure as a stage has it: all of its views, one in front at a time where there is room for one only. */
export interface StagedDrawing extends Drawn {
  /** the names of its views, in order */
  views: readonly string[]
}

async function figureOf(id: string): Promise<StagedDrawing[]> {
  const definition = loadCalculator(id)
  const Figure: Staged<LooseFigureProps> = await loadFigure(id)
  const views = Figure.views?.map((view) => view.id) ?? ['all']
  const opening = defaultsOf(definition)
  const states: readonly (readonly [string, Given, Given | null])[] = [
    ['default', opening, null],
    ['least', extreme(definition, 'least'), opening],
    ['most', extreme(definition, 'most'), opening],
  ]
  return states.flatMap(([state, given, held]) => {
    const { now, before } = evaluate(definition, given, { bikes }, held)
    return [METRIC, IMPERIAL].map((choice) => {
      const props = {
        now: now as never,
        before: before as never,
        say: createSay(choice),
        prefix: `layout-${id}`,
      }
      return {
        name: `${id}, ${state}, ${choice === METRIC ? 'metric' : 'imperial'}`,
        views,
        markup: render(h(Figure, props)),
      }
    })
  })
}

/** Each calculator's figure as it opens, and at its least and most with the opening state held as "before". */
export async function calculatorFigures(): Promise<StagedDrawing[]> {
  return (await Promise.all(calculatorIds.map(figureOf))).flat()
}

/** Each still picture. */
export async function stillFigures(): Promise<Drawn[]> {
  return Promise.all(
    stillNames.map(async (name) => {
      const Still = (await loadStill(name))!
      return {
        name,
        markup: render(h(Still, { say: createSay(METRIC), prefix: `layout-${name}` })),
      }
    }),
  )
}
