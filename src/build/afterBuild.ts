import { fileURLToPath } from 'node:url'
import type { AstroIntegration } from 'astro'
import { Bundle, listBundle } from './bundle.ts'
import { writeOffline } from './offline.ts'
import { preloadIslands } from './preload.ts'
import { buildSearchIndex } from './searchIndex.ts'
import { reportSizes } from './sizes.ts'

/** What happens to the pages once they are written; `notice` is logged first. */
export function afterBuild(notice: string): AstroIntegration {
  return {
    name: 'after-build',
    hooks: {
      'astro:config:setup': ({ updateConfig }) => {
        updateConfig({ vite: { plugins: [listBundle()] } })
      },
      'astro:build:done': async ({ dir, logger }) => {
        const root = fileURLToPath(dir)
        const bundle = await Bundle.read()
        const preloaded = await preloadIslands(root, bundle)
        logger.info(notice)
        logger.info(`preload: ${preloaded} pages name their calculators' modules`)
        logger.info(`search: ${await buildSearchIndex(root)} things can be found`)
        logger.info(`offline: ${await writeOffline(root, bundle)}`)
        for (const line of await reportSizes(root)) logger.info(line)
      },
    },
  }
}
