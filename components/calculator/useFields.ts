import { useEffect, useState } from 'preact/hooks'
import type { Given, GivenValue } from '../../src/machine/given.ts'
import type { CardStatement } from '../../src/machine/statement.ts'
import { readQuantity } from '../../src/machine/fields.ts'
import type { FieldReading } from '../../src/machine/fields.ts'
import type { UnitChoice } from '../../src/units/choice.ts'
import { quantityOf, useAsked } from './useAsked.ts'
import type { Asked } from './useAsked.ts'

type Texts = Readonly<Record<string, string>>

/** What stands in the fields as it was typed, and what is wrong with it. */
export interface Fields {
  typed: Texts
  /** what is wrong in a field that the reader has left */
  errors: Texts
  asked: Readonly<Record<string, Asked>>
  set(id: string, value: GivenValue | undefined): void
  type(id: string, text: string): void
  leave(id: string): void
  clear(): void
}

const without = (texts: Texts, id: string): Texts =>
  Object.fromEntries(Object.entries(texts).filter(([key]) => key !== id))

function withValue(given: Given, id: string, value: GivenValue | undefined): Given {
  const { [id]: _old, ...rest } = given
  return value === undefined ? rest : { ...rest, [id]: value }
}

function readTyped(
  definition: CardStatement,
  id: string,
  text: string,
  choice: UnitChoice,
): FieldReading | null {
  const input = definition.inputs[id]
  if (input === undefined) return null
  if (input.kind === 'quantity') return readQuantity(input, text, choice)
  if (input.kind !== 'text') return null
  if (text.length > input.maxLength)
    return { problem: `${input.label} may have at most ${input.maxLength} characters` }
  const problem = input.check?.(text)
  return problem === undefined ? { value: text } : { problem }
}

interface Changes {
  /** the reader has put a hand to this input, whether or not it can be read yet */
  touch(id: string): void
  change(update: (given: Given) => Given, id: string): void
}

/** Keeps what is typed until it can be read, and never changes it: errors show once the reader leaves the field. */
export function useFields(
  definition: CardStatement,
  choice: UnitChoice,
  { touch, change }: Changes,
): Fields {
  const [typed, setTyped] = useState<Texts>({})
  const [errors, setErrors] = useState<Texts>({})
  const asking = useAsked(definition, choice)
  const wrong = (id: string, problem: string): void =>
    setErrors((now) => (problem === '' ? without(now, id) : { ...now, [id]: problem }))
  const take = (id: string, value: GivenValue | undefined): void => {
    wrong(id, '')
    change((now) => withValue(now, id, value), id)
  }
  const clear = (): void => {
    asking.clear()
    setTyped({})
    setErrors({})
  }
  // what was typed in millimetres does not stand for inches: after a switch the fields show the values
  useEffect(clear, [choice])
  return {
    typed,
    errors,
    asked: asking.asked,
    clear,
    set(id, value) {
      asking.shows(id, '')
      asking.forget(id)
      touch(id)
      setTyped((now) => without(now, id))
      take(id, value)
    },
    type(id, text) {
      asking.shows(id, text)
      asking.forget(id)
      touch(id)
      setTyped((now) => ({ ...now, [id]: text }))
      const reading = readTyped(definition, id, text, choice)
      if (reading !== null && !('problem' in reading)) return take(id, reading.value)
      asking.ask(id, ({ reading: written, note }) => {
        if ('problem' in written) return
        asking.tell(id, { offers: [], note })
        take(id, written.value)
      })
    },
    leave(id) {
      const text = typed[id]
      const reading = text === undefined ? null : readTyped(definition, id, text, choice)
      if (reading === null) return
      const failed = 'problem' in reading
      if (failed && asking.asked[id] === undefined) wrong(id, reading.problem)
      if (failed || quantityOf(definition, id)?.oneLeg)
        asking.ask(id, (written) => {
          asking.tell(id, written)
          wrong(id, 'problem' in written.reading ? written.reading.problem : '')
        })
    },
  }
}
