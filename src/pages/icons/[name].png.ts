import type { APIRoute } from 'astro'
import { drawIcon, icons } from '../../build/icons.ts'

export function getStaticPaths() {
  return icons.map((icon) => ({ params: { name: icon.name }, props: icon }))
}

/** One icon of the site. */
export const GET: APIRoute<(typeof icons)[number]> = async ({ props }) =>
  new Response(new Uint8Array(await drawIcon(props)), { headers: { 'content-type': 'image/png' } })
