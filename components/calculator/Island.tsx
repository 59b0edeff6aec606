import type { ComponentChildren, JSX } from 'preact'
import { useMemo } from 'preact/hooks'
import type { Remark } from '../../src/machine/remark.ts'
import type { CardStatement } from '../../src/machine/statement.ts'
import { loadFigure, loadWork, workIds } from '../../src/calculators/browser.ts'
import { calculatorOf } from '../../src/machine/calculator.ts'
import { Card } from './Card.tsx'
import type { CardProps } from './useCalculator.ts'

/** The calculators that this page holds; while building, all of them. */
function idsHere(): string[] {
  if (import.meta.env.SSR) return workIds
  return [
    ...new Set(
      [...document.querySelectorAll<HTMLElement>('[data-calculator-place]')].map(
        (place) => place.dataset['calculatorPlace']!,
      ),
    ),
  ]
}

// Loaded before the island's module is ready, so that a card is there at its first render, on the server as in the browser.
const parts = new Map(
  await Promise.all(
    idsHere().map(async (id) => [id, await Promise.all([loadWork(id), loadFigure(id)])] as const),
  ),
)

interface IslandProps extends CardProps {
  /** first, since the build reads it in the page */
  id: string
  statement: CardStatement
  /** what the remarks say on the values that the page opens with */
  told: readonly Remark[]
  /** assumptions and limits, rendered by the page */
  children?: ComponentChildren
}

/** The island that a page places. Astro can't hand functions to it, so it gets plain data and looks the rest up by id. */
export default function Island({ id, statement, children, ...props }: IslandProps): JSX.Element {
  const [work, Figure] = parts.get(id)!
  const calculator = useMemo(() => calculatorOf(statement, work), [statement, work])
  return (
    <Card {...props} definition={calculator} Figure={Figure}>
      {children}
    </Card>
  )
}
