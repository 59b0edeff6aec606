import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vitest/config'
import { LongestFirst } from './longestFirst.ts'

/** Three kinds of test share one run: the core and calculators in Node, the content files, and the built site in a browser. */
export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    include: ['tests/**/*.test.{ts,tsx}'],
    exclude: ['dist/**', 'node_modules/**', '.cache/**'],
    globalSetup: ['tests/site/globalSetup.ts'],
    testTimeout: 240_000,
    hookTimeout: 120_000,
    maxWorkers: 2,
    sequence: { sequencer: LongestFirst },
    reporters: ['default', ['json', { outputFile: 'reports/tests.json' }]],
  },
})
