import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vitest/config'

/** The core's tests alone, without a browser: what mutation testing runs. Instrumented code is many times slower, hence the long limit. */
export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: { include: ['tests/core/**/*.test.ts'], exclude: ['tests/core/coverage.test.ts'], testTimeout: 300_000, setupFiles: ['tests/core/fewer-runs.ts'] },
})
