import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vitest/config'

/** Tests of the core, or those that tests/mutate.ts names, without a build or a browser. Instrumented code is many times slower, hence the long limit. */
export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    include: (process.env['MUTATE_TESTS'] ?? 'core/**/*')
      .split(',')
      .map((name) => `tests/${name}.test.ts`),
    exclude: ['tests/core/coverage.test.ts'],
    setupFiles: ['tests/core/fewerRuns.ts'],
    testTimeout: 300_000,
  },
})
