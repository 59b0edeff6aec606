import type { JSX } from 'preact'
import type { Cell } from '../../src/machine/cells.ts'
import { nameOf, wordsOf } from '../../src/machine/labels.ts'
import { cellText, changeText, isTable, isWords } from './resultText.ts'
import type { CalculatorState } from './useCalculator.ts'

/** What is told beside the first result at most. */
const FURTHER = 3

/** From so many letters on a name and its numbers are on a phone's one line in some fonts and not in others: it gets a line to itself there, so that nothing below moves as fonts come. */
const LONG_NAME = 10

/** A length before needs no unit where the one now carries it. */
const bare = (text: string, now: string): string => {
  const unit = /[\s°][^\d]*$/.exec(now)?.[0] ?? ''
  return unit !== '' && text.endsWith(unit) ? text.slice(0, -unit.length) : text
}

interface Told {
  name: string
  now: string
  was: string | null
  change: string | null
}

/** The results told first, each with what it was and by how much it moved. */
function leadsOf({
  definition,
  evaluation: { now, before, change },
  say,
}: CalculatorState): Told[] {
  if (now === null) return []
  return Object.entries(definition.outputs).flatMap(([id, output]) => {
    if (isTable(output) || output.lead !== true) return []
    const value = now.output[id] as Cell
    const text = cellText(say, output, value)
    const was = before ? (before.output[id] as Cell) : undefined
    const moved = before ? change[id] : undefined
    const signed = !isWords(output) && moved !== undefined ? changeText(say, output, moved) : null
    return [
      {
        name: nameOf(output.label),
        now: text,
        was: was === undefined || was === null ? null : cellText(say, output, was),
        change: signed === null ? null : bare(signed, text),
      },
    ]
  })
}

/** A verdict in words, where the calculator gives one. */
function verdictOf({ definition, evaluation: { now } }: CalculatorState): string | null {
  for (const [id, output] of Object.entries(definition.outputs)) {
    if (output.kind !== 'choice' || output.lead || output.more) continue
    const words = wordsOf(output, (now?.output[id] ?? null) as Cell)
    if (words !== '') return words
  }
  return null
}

function Lead({ name, now, was, change }: Told): JSX.Element {
  const moved = was !== null && was !== now
  return (
    <p class={name.length > LONG_NAME ? 'strip-lead apart' : 'strip-lead'}>
      <span class="name">{name}</span>{' '}
      {moved && (
        <>
          <span class="was">{bare(was, now)}</span> →{' '}
        </>
      )}
      <span class="is">{now}</span> {moved && change && <span class="diff">{change}</span>}
    </p>
  )
}

/** One line under the drawing that moves with the hand: the first result before and now, the others, and the verdict. Screen readers are told the same once the values stand still. */
export function Strip({
  state,
  reading,
}: {
  state: CalculatorState
  reading: string
}): JSX.Element {
  const [first, ...others] = leadsOf(state)
  const verdict = verdictOf(state)
  const stale = Object.values(state.errors)[0]
  return (
    <div class="strip" data-strip aria-hidden="true">
      {first ? <Lead {...first} /> : <p class="strip-lead">No result with these values</p>}
      {stale ? (
        <p class="strip-more stale">{stale}: shown for the value before.</p>
      ) : (
        (others.length > 0 || verdict) && (
          <p class="strip-more">
            {others.slice(0, FURTHER - 1).map(({ name, now, change }) => (
              <span key={name}>
                {name} {now} {change && <span class="diff">{change}</span>}
              </span>
            ))}
            {verdict && <span class="verdict">{verdict}</span>}
            {(state.waiting || state.looking) && <span class="still-looking">Still looking …</span>}
          </p>
        )
      )}
      {reading && <p class="strip-reading">{reading}</p>}
    </div>
  )
}
