import type { FigureDefinition } from '../../src/bikes/figure.ts'
import type { Figure } from '../../src/record/records.ts'
import { bikeIn } from '../../src/record/store/bookStore.ts'
import type { BikeProps } from './props.ts'

/** Writes a figure of a bike, or takes it away, and says what it replaces. */
export async function keepFigure(
  { bike, state }: Pick<BikeProps, 'bike' | 'state'>,
  { id, label }: FigureDefinition,
  figure: Figure | null,
): Promise<void> {
  const what = `${bike.name}: ${label.toLowerCase()} ${figure === null ? 'is unknown again' : 'written'}`
  await state.change(what, async (shelf) => {
    const now = await bikeIn(shelf, bike.id)
    if (!now) return []
    const { [id]: _old, ...others } = now.figures
    const figures = figure === null ? others : { ...others, [id]: figure }
    return [{ store: 'bikes', id: bike.id, record: { ...now, figures } }]
  })
}
