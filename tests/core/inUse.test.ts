import { expect, test } from 'vitest'
import * as core from '../../src/core/index.ts'
import { calledFrom, filesBelow, importedFrom, reached, references } from './references.ts'

/** Kept for programs that call the core by these names; no page needs them. The last two are the search run to its end, which pages run in steps. */
const FOR_OTHERS = ['gasRate', 'springEnergy', 'whippleStateMatrix', 'changeSearch', 'findChange']
/** Asked for by the plan of the physics, for pages that are not there yet: whoever writes one takes its name off this list. */
const NO_PAGE_YET = ['squat', 'liftBand', 'rearUnloadingOvershoot']

const SITE = /\.(?:ts|tsx|astro)$/
const functions = Object.entries(core).flatMap(([name, value]) =>
  typeof value === 'function' ? [name] : [],
)

test('every function that src/core/index.ts exports is called in tests/core', () => {
  const called = new Set(
    filesBelow('tests/core').flatMap((file) => [...calledFrom('src/core', file)]),
  )
  expect(functions.filter((name) => !called.has(name))).toEqual([])
})

test('every name that src/core/index.ts exports is used by a page: by a calculator, a lesson, a check, or a function of the core that one of these calls', () => {
  const roots = [...filesBelow('src', SITE), ...filesBelow('components', SITE)]
    .filter((file) => !file.startsWith('src/core/'))
    .flatMap((file) => [...importedFrom('src/core', file).values()])
  const used = reached(roots, references('src/core'))
  const idle = Object.keys(core).filter((name) => !used.has(name))
  expect(idle.sort()).toEqual([...FOR_OTHERS, ...NO_PAGE_YET].sort())
})
