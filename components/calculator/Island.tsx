import type { ComponentType, JSX } from 'preact'
import { lazy, Suspense } from 'preact/compat'
import { calculatorIds, loadCalculator } from '../../src/calculators/index.ts'
import { loadFigure } from '../figures/index.ts'
import { Card } from './Card.tsx'
import type { CardProps } from './useCalculator.ts'

/** Definition and figure load together, for this calculator alone. Astro can't hand functions to an island, so the island gets an id. */
const cards: Record<string, ComponentType<CardProps>> = Object.fromEntries(
  calculatorIds.map((id) => [
    id,
    lazy(async () => {
      const [definition, Figure] = await Promise.all([loadCalculator(id), loadFigure(id)])
      return { default: (props: CardProps): JSX.Element => <Card {...props} definition={definition} Figure={Figure} /> }
    }),
  ]),
)

/** The island that a page places. */
export default function Island({ id, ...props }: CardProps & { id: string }): JSX.Element | null {
  const Loaded = cards[id]
  if (Loaded === undefined) return null
  return (
    <Suspense fallback={null}>
      <Loaded {...props} />
    </Suspense>
  )
}
