import { figuresFeeding } from '../../bikes/figures.ts'
import { calculatorIds, loadCalculator } from '../../calculators/index.ts'

/** What each calculator is called and which of its inputs other cards can fill: for “Go on with these numbers”. */
export function GET(): Response {
  const fields = calculatorIds.map((id) => {
    const { title, inputs } = loadCalculator(id)
    const bike = Object.entries(inputs).find(([, { kind }]) => kind === 'bike')?.[0] ?? null
    const fed = [...figuresFeeding(id).keys()].flatMap((input) => {
      const field = inputs[input]
      return field?.kind === 'quantity' ? [[input, field.unit, ...field.range] as const] : []
    })
    return { id, title, bike, fed }
  })
  return new Response(JSON.stringify(fields), { headers: { 'content-type': 'application/json' } })
}
