import { fileURLToPath } from 'node:url'
import type { AstroIntegration } from 'astro'
import { preloadIslands } from './preload.ts'
import { buildSearchIndex } from './searchIndex.ts'
import { reportSizes } from './sizes.ts'

/** What happens to the pages once they are written. */
export function afterBuild(): AstroIntegration {
  return {
    name: 'after-build',
    hooks: {
      'astro:build:done': async ({ dir, logger }) => {
        const root = fileURLToPath(dir)
        logger.info(`preload: ${await preloadIslands(root)} pages name their calculators' modules`)
        logger.info(`search: ${await buildSearchIndex(root)} things can be found`)
        for (const line of await reportSizes(root)) logger.info(line)
      },
    },
  }
}
