import { useEffect, useState } from 'preact/hooks'
import type { Given, GivenValue } from '../../src/machine/given.ts'
import type { CardStatement } from '../../src/machine/statement.ts'
import { readQuantity } from '../../src/machine/fields.ts'
import type { UnitChoice } from '../../src/units/choice.ts'

type Texts = Readonly<Record<string, string>>

/** What stands in the fields as it was typed, and what is wrong with it. */
export interface Fields {
  typed: Texts
  /** what is wrong in a field that the reader has left */
  errors: Texts
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
): ReturnType<typeof readQuantity> | null {
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
  const clear = (): void => {
    setTyped({})
    setErrors({})
  }
  // what was typed in millimetres does not stand for inches: after a switch the fields show the values
  useEffect(clear, [choice])
  return {
    typed,
    errors,
    clear,
    set(id, value) {
      touch(id)
      setTyped((now) => without(now, id))
      setErrors((now) => without(now, id))
      change((now) => withValue(now, id, value), id)
    },
    type(id, text) {
      touch(id)
      setTyped((now) => ({ ...now, [id]: text }))
      const reading = readTyped(definition, id, text, choice)
      if (reading === null || 'problem' in reading) return
      setErrors((now) => without(now, id))
      change((now) => withValue(now, id, reading.value), id)
    },
    leave(id) {
      const text = typed[id]
      const reading = text === undefined ? null : readTyped(definition, id, text, choice)
      if (reading !== null && 'problem' in reading)
        setErrors((now) => ({ ...now, [id]: reading.problem }))
    },
  }
}
