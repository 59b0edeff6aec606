import type { JSX } from 'preact'
import { useEffect, useState } from 'preact/hooks'
import { figuresFeeding, keptFrom } from '../../src/bikes/figures.ts'
import { isAsked } from '../../src/machine/evaluate.ts'
import { tidy } from '../../src/machine/fields.ts'
import { ofThisEdition } from '../../src/offline/edition.ts'
import { isInterval } from '../../src/units/interval.ts'
import { convert, fromSI } from '../../src/units/units.ts'
import type { Unit } from '../../src/units/units.ts'
import { bikeInputOf } from './bikeFill.ts'
import type { CalculatorState } from './useCalculator.ts'

/** What the site says of its calculators' inputs. */
interface Fields {
  id: string
  title: string
  bike: string | null
  fed: readonly (readonly [input: string, unit: Unit, low: number, high: number])[]
}

/** The figures in sight, by id, each in its own unit: a result goes before an input of the same name. */
function figuresHere({
  definition,
  given,
  evaluation,
}: CalculatorState): Map<string, { value: number; unit: Unit }> {
  const found = new Map<string, { value: number; unit: Unit }>()
  for (const [id, figure] of figuresFeeding(definition.id)) {
    const [input, value] = [definition.inputs[id], given[id]]
    if (input?.kind === 'quantity' && typeof value === 'number' && isAsked(input, given))
      found.set(figure.id, { value: convert(value, input.unit, figure.unit), unit: figure.unit })
  }
  for (const { output, when, figure } of keptFrom(definition.id)) {
    const cell = evaluation.now?.output[output]
    const middle = typeof cell === 'number' ? cell : isInterval(cell) ? cell.value : undefined
    const fits = Object.entries(when).every(([id, value]) => given[id] === value)
    if (fits && middle !== undefined)
      found.set(figure.id, { value: fromSI(middle, figure.unit), unit: figure.unit })
  }
  return found
}

interface Way {
  href: string
  title: string
  count: number
}

/** The calculators that take numbers of this card, those that take most first. */
function waysFrom(state: CalculatorState, all: readonly Fields[]): Way[] {
  const here = figuresHere(state)
  const bikeInput = bikeInputOf(state.definition)
  const ways = all.flatMap(({ id, title, bike, fed }) => {
    if (id === state.definition.id) return []
    const query = new URLSearchParams()
    if (bike !== null && bikeInput !== null) query.set(bike, String(state.given[bikeInput]))
    const takes = figuresFeeding(id)
    for (const [input, unit, low, high] of fed) {
      const figure = takes.get(input)
      const known = figure && here.get(figure.id)
      const value = known && tidy(convert(known.value, known.unit, unit))
      if (value !== undefined && value >= low && value <= high) query.set(input, String(value))
    }
    const text = query.toString().replaceAll('%3A', ':').replaceAll('%3B', ';')
    return query.size === 0
      ? []
      : [{ href: `${state.base}calculators/${id}/?${text}`, title, count: query.size }]
  })
  return ways.sort((one, other) => other.count - one.count)
}

/** “Go on with these numbers”: other calculators, opened with what this card has. */
export function GoOn({ state }: { state: CalculatorState }): JSX.Element {
  const [all, setAll] = useState<readonly Fields[] | null>(null)
  useEffect(() => {
    void fetch(ofThisEdition(`${state.base}calculators/fields.json`))
      .then((answer) => answer.json())
      .then((fields) => setAll(fields as Fields[]))
      .catch(() => setAll([]))
  }, [state.base])
  if (all === null) return <p class="note">Looking for calculators that take these numbers…</p>
  const ways = waysFrom(state, all)
  return (
    <nav class="go-on-with" aria-label="Go on with these numbers">
      {ways.length === 0 ? (
        <p class="note">No other calculator takes numbers of this one.</p>
      ) : (
        <>
          <p>Go on with these numbers in</p>
          <ul>
            {ways.map(({ href, title, count }) => (
              <li key={href}>
                <a href={href}>{title}</a>{' '}
                <small>
                  {count} {count === 1 ? 'value' : 'values'}
                </small>
              </li>
            ))}
          </ul>
        </>
      )}
    </nav>
  )
}
