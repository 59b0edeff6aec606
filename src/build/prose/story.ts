import { loadCalculator } from '../../calculators/index.ts'
import { loadBikes } from './bikes.ts'
import { computeValue } from './value.ts'
import type { Fact } from './storySchema.ts'
import type { ShownValue } from './value.ts'

/** The number of a fact of the story, metric and imperial. */
export async function storyValue({ calculator, size, ...request }: Fact): Promise<ShownValue> {
  const shown = computeValue(loadCalculator(calculator), request, await loadBikes())
  const plain = (text: string): string => (size ? text.replace(/^[+−]/, '') : text)
  return {
    metric: plain(shown.metric),
    imperial: shown.imperial === null ? null : plain(shown.imperial),
  }
}
