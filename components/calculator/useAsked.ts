import { useRef, useState } from 'preact/hooks'
import type { Written } from '../../src/machine/asWritten.ts'
import type { CardStatement, QuantityInput } from '../../src/machine/statement.ts'
import type { UnitChoice } from '../../src/units/choice.ts'

/** What a unit that was typed came to, and what else a number may mean. */
export type Asked = Pick<Written, 'note' | 'offers'>

interface Asking {
  asked: Readonly<Record<string, Asked>>
  /** what a field shows now */
  shows(id: string, text: string): void
  /** Reads a quantity's text with its unit, and hands on the answer unless the field shows something else by then. */
  ask(id: string, then: (written: Written) => void): void
  tell(id: string, asked: { note?: string | undefined; offers: Asked['offers'] }): void
  forget(id: string): void
  clear(): void
}

/** The input of this id where it is a quantity. */
export function quantityOf({ inputs }: CardStatement, id: string): QuantityInput | null {
  const input = inputs[id]
  return input?.kind === 'quantity' ? input : null
}

/** Few readers type a unit, so that what reads one comes when it is needed. */
async function readWritten(
  input: QuantityInput,
  text: string,
  choice: UnitChoice,
): Promise<Written | null> {
  try {
    return (await import('../../src/machine/asWritten.ts')).readWritten(input, text, choice)
  } catch {
    // without it the field says that this is not a number, and how to write one
    return null
  }
}

/** Keeps what a field asks back: of a unit that was typed, or of a number that may mean something else. */
export function useAsked(definition: CardStatement, choice: UnitChoice): Asking {
  const [asked, setAsked] = useState<Asking['asked']>({})
  const latest = useRef<Record<string, string>>({})
  return {
    asked,
    shows(id, text) {
      latest.current[id] = text
    },
    ask(id, then) {
      const input = quantityOf(definition, id)
      const text = latest.current[id]
      if (input === null || text === undefined || text.trim() === '') return
      void readWritten(input, text, choice).then((written) => {
        if (written !== null && latest.current[id] === text) then(written)
      })
    },
    tell(id, { note, offers }) {
      setAsked((now) => ({
        ...now,
        [id]: { offers, ...(note === undefined ? {} : { note }) },
      }))
    },
    forget(id) {
      setAsked((now) => Object.fromEntries(Object.entries(now).filter(([key]) => key !== id)))
    },
    clear() {
      latest.current = {}
      setAsked({})
    },
  }
}
