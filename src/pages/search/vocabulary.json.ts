import type { APIRoute } from 'astro'
import { lexiconSource } from '../../build/lexiconSource.ts'

/** The first half of the search vocabulary; the build completes it once the index has named every page. */
export const GET: APIRoute = async () =>
  new Response(JSON.stringify(await lexiconSource()), {
    headers: { 'Content-Type': 'application/json' },
  })
