import { existsSync, readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, test } from 'vitest'

function filesUnder(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.(ts|tsx|astro)$/.test(entry.name))
    .map((entry) => path.join(entry.parentPath, entry.name))
}

const IMPORT =
  /(?:import|export)\b[^'"`;]*?\bfrom\s*['"](\.[^'"]+)['"]|import\(\s*['"](\.[^'"]+)['"]\s*\)|^import\s+['"](\.[^'"]+)['"]/gm

/** Files that a file imports by a relative path, from the project's root; a template's imports, which lead nowhere here, are none. */
function importsOf(file: string): string[] {
  return [...readFileSync(file, 'utf8').matchAll(IMPORT)]
    .map((match) => path.join(path.dirname(file), match[1] ?? match[2] ?? match[3]!))
    .filter((target) => existsSync(target))
}

const imports = new Map(
  ['src', 'components'].flatMap(filesUnder).map((file) => [file, importsOf(file)]),
)

/** The folder that a file belongs to, without `src/`; a file beside the folders stands for itself. */
const roomOf = (file: string): string =>
  /^src\/([^/]+)/.exec(file)?.[1] ?? file.split('/').slice(0, 2).join('/')

const CALCULATORS = ['calculators', 'drawing', 'machine', 'bikes', 'units', 'core']
const SITE = ['site.ts', 'base.ts', 'styles']
const LOGIC = [...CALCULATORS, 'checks', 'offline', 'record', 'jobs', 'search']

/** Where each folder may point besides itself: core ← units ← bikes ← machine ← drawing ← calculators ← components ← pages. */
const ALLOWED: Record<string, readonly string[]> = {
  core: [],
  units: ['core'],
  bikes: ['units', 'core'],
  machine: ['bikes', 'units', 'core'],
  drawing: ['machine', 'bikes', 'units', 'core'],
  calculators: CALCULATORS,
  checks: CALCULATORS,
  record: ['machine', 'bikes', 'units'],
  jobs: ['record', 'machine', 'units'],
  worksheet: CALCULATORS,
  lesson: ['worksheet', 'machine', 'units', 'core'],
  room: [],
  offline: ['base.ts'],
  search: ['offline', 'base.ts', 'styles'],
  build: [...LOGIC, 'site.ts', 'base.ts'],
  scripts: ['record', 'units'],
  'components/calculator': [...CALCULATORS, 'offline', 'record'],
  'components/prose': [...LOGIC, ...SITE, 'build', 'components/calculator', 'components/room'],
  'components/procedure': [...LOGIC, ...SITE, 'build', 'components/calculator', 'components/prose'],
  'components/record': [...LOGIC, ...SITE, 'components/calculator'],
  'components/job': [
    ...LOGIC,
    ...SITE,
    'build',
    'components/calculator',
    'components/prose',
    'components/procedure',
  ],
  'components/room': [...CALCULATORS, 'worksheet', 'room'],
  'components/lesson': [...CALCULATORS, ...SITE, 'lesson', 'worksheet', 'components/prose'],
  'components/worksheet': [...CALCULATORS, ...SITE, 'worksheet'],
  layouts: [...SITE, 'offline', 'search', 'units', 'components/prose'],
  'base.ts': [],
  'site.ts': ['base.ts'],
  'content.config.ts': ['record', 'machine', 'units'],
  styles: [],
}

test('every folder of src and components has its place in the chain; pages put them together', () => {
  const rooms = new Set([...imports.keys()].map(roomOf))
  expect([...rooms].filter((room) => room !== 'pages' && !Object.hasOwn(ALLOWED, room))).toEqual([])
})

describe.each(Object.entries(ALLOWED))('%s', (room, allowed) => {
  test('points only down the chain', () => {
    const wrong = [...imports]
      .filter(([file]) => roomOf(file) === room)
      .flatMap(([file, targets]) => targets.map((target) => [file, target] as const))
      .filter(([, target]) => roomOf(target) !== room && !allowed.includes(roomOf(target)))
    expect(wrong.map((pair) => pair.join(' → '))).toEqual([])
  })
})

/** The first circle on the way from one to another along the arrows, or none. */
function circleIn(arrows: ReadonlyMap<string, readonly string[]>): string[] {
  const done = new Set<string>()
  const walk = (from: string, way: readonly string[]): string[] => {
    if (way.includes(from)) return [...way.slice(way.indexOf(from)), from]
    if (done.has(from)) return []
    for (const to of arrows.get(from) ?? []) {
      const circle = walk(to, [...way, from])
      if (circle.length > 0) return circle
    }
    done.add(from)
    return []
  }
  for (const from of arrows.keys()) {
    const circle = walk(from, [])
    if (circle.length > 0) return circle
  }
  return []
}

test('no file leads back to itself', () => {
  expect(circleIn(imports)).toEqual([])
})

test('no folder leads back to itself through another', () => {
  expect(circleIn(new Map(Object.entries(ALLOWED).map(([room, all]) => [room, all.filter((each) => each !== room)])))).toEqual([])
})

test('src/core imports no package', () => {
  const wrong = filesUnder('src/core').filter((file) => /^(?:import|export)[^'"]*from\s*['"][^.'"]/m.test(readFileSync(file, 'utf8')))
  expect(wrong).toEqual([])
})

describe.each(['README.md', 'DEVELOPERS.md'])('%s', (page) => {
  const text = readFileSync(page, 'utf8')

  test('names only paths that exist', () => {
    const named = [...text.matchAll(/`((?:src|content|components|tests|public|\.ci)\/[\w./-]*)`/g)].map((match) => match[1]!)
    expect(named.length).toBeGreaterThan(4)
    expect(named.filter((each) => !existsSync(each))).toEqual([])
  })

  test('names only scripts that exist', () => {
    const scripts = Object.keys((JSON.parse(readFileSync('package.json', 'utf8')) as { scripts: Record<string, string> }).scripts)
    const named = [...text.matchAll(/npm (?:run )?([a-z][\w-]*)/g)].map((match) => match[1]!).filter((name) => !['run', 'ci', 'exec', 'install', 'outdated', 'package', 'scripts', 'script'].includes(name))
    expect(named.filter((name) => !scripts.includes(name))).toEqual([])
  })
})

test('the top level holds what the design names and nothing else', () => {
  const shown = readdirSync('.').filter((name) => !name.startsWith('.') && !['node_modules', 'dist', 'reports'].includes(name))
  expect(shown.sort()).toEqual(['DEVELOPERS.md', 'LICENSE', 'README.md', 'astro.config.mjs', 'components', 'content', 'package-lock.json', 'package.json', 'public', 'src', 'tests', 'tsconfig.json'])
})

test('no folder is a drawer for odds and ends', () => {
  const folders = ['src', 'components', 'tests'].flatMap((root) => readdirSync(root, { recursive: true, withFileTypes: true }).filter((entry) => entry.isDirectory()).map((entry) => entry.name))
  expect(folders.filter((name) => /^(utils?|lib|helpers?|common|misc)$/.test(name))).toEqual([])
})
