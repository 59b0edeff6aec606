import type { APIRoute } from 'astro'
import { calculatorIds, loadCalculator } from '../../../calculators/index.ts'

export const getStaticPaths = () => calculatorIds.map((id) => ({ params: { id } }))

/** A calculator's inputs and outputs for programs: kinds, units, ranges, defaults. Links carry values in these units. */
export const GET: APIRoute = async ({ params }) => {
  const { id, version, title, answers, assumes, leavesOut, inputs, outputs } = loadCalculator(
    params['id'] ?? '',
  )
  return new Response(
    JSON.stringify({ id, version, title, answers, assumes, leavesOut, inputs, outputs }, null, 2),
    {
      headers: { 'content-type': 'application/json' },
    },
  )
}
