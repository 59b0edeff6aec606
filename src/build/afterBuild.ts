import type { AstroIntegration } from 'astro'

/** What happens to the pages once they are written. */
export function afterBuild(): AstroIntegration {
  return { name: 'after-build', hooks: { 'astro:build:done': () => {} } }
}
