import { getCollection } from 'astro:content'
import type { APIRoute } from 'astro'
import { base } from '../base.ts'
import { publicAddress } from '../build/address.ts'
import { atomFeed, newestFirst } from '../build/feed.ts'
import { edition } from '../site.ts'

/** The change log for feed readers. */
export const GET: APIRoute = async () =>
  new Response(
    atomFeed(
      newestFirst(await getCollection('editions')),
      publicAddress(process.env) ?? base,
      new Date(edition),
    ),
    { headers: { 'Content-Type': 'application/atom+xml' } },
  )
