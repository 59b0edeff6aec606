import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vitest/config'

/** The core's tests alone, without a browser: what mutation testing runs. */
export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: { include: ['tests/core/**/*.test.ts'], testTimeout: 60_000 },
})
