import { fileURLToPath } from 'node:url'
import type { AstroIntegration } from 'astro'
import { buildSearchIndex } from './searchIndex.ts'

/** What happens to the pages once they are written. */
export function afterBuild(): AstroIntegration {
  return {
    name: 'after-build',
    hooks: {
      'astro:build:done': async ({ dir, logger }) => {
        logger.info(`search: ${await buildSearchIndex(fileURLToPath(dir))} things can be found`)
      },
    },
  }
}
