import process from 'node:process'
import mdx from '@astrojs/mdx'
import preact from '@astrojs/preact'
import { satteri } from '@astrojs/markdown-satteri'
import { defineConfig } from 'astro/config'
import { drawnOptions } from './src/build/drawOptions.ts'
import { maths } from './src/build/maths.ts'
import { addressNotice, basePath, publicAddress } from './src/build/address.ts'
import { afterBuild } from './src/build/afterBuild.ts'

process.env.ASTRO_TELEMETRY_DISABLED = '1'

const address = publicAddress(process.env)

export default defineConfig({
  ...(address && { site: new URL(address).origin }),
  base: basePath(process.env),
  trailingSlash: 'always',
  devToolbar: { enabled: false },
  prefetch: false,
  build: { inlineStylesheets: 'never' },
  markdown: {
    processor: satteri({ features: { math: true }, mdastPlugins: [maths, drawnOptions] }),
    syntaxHighlight: false,
  },
  integrations: [mdx(), preact(), afterBuild(addressNotice(address))],
  security: {
    csp: {
      directives: [
        "default-src 'none'",
        "img-src 'self' data:",
        "font-src 'self'",
        "connect-src 'self'",
        "worker-src 'self'",
        "manifest-src 'self'",
        "base-uri 'none'",
        "form-action 'self'",
      ],
      scriptDirective: { resources: ["'self'", "'wasm-unsafe-eval'"] },
      styleDirective: { resources: ["'self'"] },
    },
  },
  vite: {
    build: { assetsInlineLimit: 0, modulePreload: false },
    resolve: { dedupe: ['preact'] },
    worker: { format: 'es' },
  },
})
