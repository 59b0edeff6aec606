import { existsSync } from 'node:fs'
import { readdir, readFile, writeFile } from 'node:fs/promises'
import path from 'node:path'
import type { Bundle } from './bundle.ts'

/* An island hydrates after its script, that script's imports, its renderer, its calculator's work
   and its figure have come: three round trips one after the other. Naming them all in the page's
   head makes that one. What a calculator remarks comes later, by itself. */

const ISLAND =
  /<astro-island[^>]*? component-url="([^"]+)"[^>]*? renderer-url="([^"]+)"[^>]*?props="\{&quot;id&quot;:\[0,&quot;([\w-]+)&quot;\]/g

/** What a page gets of a calculator's work: the work itself, or how to reach it in a worker. */
export const workSource = (id: string): string => {
  const away = `src/calculators/${id}/away.ts`
  return existsSync(away) ? away : `src/calculators/${id}/solve.ts`
}

/** The files that a calculator's island loads later: its work and its figure. */
export const laterFiles = (bundle: Bundle, id: string): { work: string; figure: string } => ({
  work: bundle.fileOf(workSource(id)),
  figure: bundle.fileOf(`src/calculators/${id}/Figure.tsx`),
})

/** The addresses of the modules that the islands of a page need. */
function wantedBy(html: string, bundle: Bundle): Set<string> {
  const wanted = new Set<string>()
  for (const [, componentUrl, rendererUrl, id] of html.matchAll(ISLAND)) {
    const base = componentUrl!.slice(0, componentUrl!.lastIndexOf('_astro/'))
    const own = [componentUrl!, rendererUrl!].map((url) => url.slice(base.length))
    const { work, figure } = laterFiles(bundle, id!)
    for (const file of bundle.closure([...own, work, figure])) wanted.add(base + file)
  }
  return wanted
}

/** Names in each page's head the modules that its calculators need. Returns how many pages got some. */
export async function preloadIslands(root: string, bundle: Bundle): Promise<number> {
  const files = await readdir(root, { recursive: true })
  let changed = 0
  for (const page of files.filter((file) => file.endsWith('.html'))) {
    const html = await readFile(path.join(root, page), 'utf8')
    const wanted = [...wantedBy(html, bundle)]
    if (wanted.length === 0) continue
    const links = wanted.map((file) => `<link rel="modulepreload" href="${file}">`).join('')
    await writeFile(path.join(root, page), html.replace('</head>', `${links}</head>`))
    changed++
  }
  return changed
}
