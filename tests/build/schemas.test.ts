import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { expect, test } from 'vitest'

/* Schemas of content need all of zod, five times what a page's own script weighs: browsers get their types, and zod/mini alone with the bench book. */

const sources = ['src', 'components'].flatMap((folder) =>
  readdirSync(folder, { recursive: true })
    .map((file) => `${folder}/${String(file)}`)
    .filter((file) => /\.(ts|tsx|astro)$/.test(file)),
)
const read = (file: string): string => readFileSync(file, 'utf8')

/** The files that a file loads, types left out. */
const loaded = (file: string): string[] =>
  [...read(file).matchAll(/^import \{[^}]*\} from '(\.[^']+)'/gm)].map((match) =>
    path.posix.join(path.posix.dirname(file), match[1]!),
  )

test('a schema of content is imported with `import type`, but for what runs while building', () => {
  const schemas = sources.filter((file) => /from '(?:astro\/)?zod'/.test(read(file)))
  expect(schemas.length).toBeGreaterThan(5)
  const loading = sources.filter((file) => loaded(file).some((each) => schemas.includes(each)))
  expect(loading).toContain('src/content.config.ts')
  const building = /^src\/(?:content\.config\.ts|build\/|pages\/)/
  expect(loading.filter((file) => !building.test(file))).toEqual([])
})

test('no script of the built site holds all of zod', () => {
  const scripts = readdirSync('dist/_astro').filter((file) => file.endsWith('.js'))
  // zod/mini names its own classes ZodMini…; this one is the whole's
  const holding = scripts.filter((file) =>
    /_ZodString/.test(readFileSync(`dist/_astro/${file}`, 'utf8')),
  )
  expect(scripts.length).toBeGreaterThan(50)
  expect(holding).toEqual([])
})
