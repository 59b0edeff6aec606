import { loadBikes } from '../../build/prose/bikes.ts'

/** The invented bikes, for cards that have none of their own and are to be filled from a reader's. */
export async function GET(): Promise<Response> {
  return new Response(JSON.stringify(await loadBikes()), {
    headers: { 'content-type': 'application/json' },
  })
}
