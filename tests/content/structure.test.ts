import { existsSync, readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, test } from 'vitest'

function filesUnder(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.(ts|tsx|astro)$/.test(entry.name))
    .map((entry) => path.join(entry.parentPath, entry.name))
}

const IMPORT =
  /(?:import|export)\b[^'"`;]*?\bfrom\s*['"](\.[^'"]+)['"]|import\(\s*['"](\.[^'"]+)['"]\s*\)|^import\s+['"](\.[^'"]+)['"]|new URL\(\s*['"](\.[^'"]+)['"],\s*import\.meta\.url/gm

/** Files that a file imports or starts as a worker by a relative path, from the project's root; a template's imports, which lead nowhere here, are none, nor is what is below `node_modules`. */
function importsOf(file: string): string[] {
  return [...readFileSync(file, 'utf8').matchAll(IMPORT)]
    .map((match) => path.join(path.dirname(file), match.slice(1).find((each) => each !== undefined)!))
    .filter((target) => existsSync(target) && !target.startsWith('node_modules'))
}

const imports = new Map(
  ['src', 'components'].flatMap(filesUnder).map((file) => [file, importsOf(file)]),
)

/** The folder that a file belongs to, without `src/`; a file beside the folders stands for itself. */
const roomOf = (file: string): string =>
  /^src\/([^/]+)/.exec(file)?.[1] ?? file.split('/').slice(0, 2).join('/')

/** Where each folder points besides itself: core ← units ← bikes ← machine ← drawing ← calculators ← components ← pages. */
const ALLOWED: Record<string, readonly string[]> = {
  core: [],
  units: [],
  bikes: ['units', 'core'],
  machine: ['bikes', 'units', 'core'],
  drawing: ['machine', 'bikes', 'units'],
  calculators: ['drawing', 'machine', 'bikes', 'units', 'core'],
  checks: ['machine', 'bikes', 'units', 'core'],
  record: ['machine', 'bikes', 'units'],
  jobs: [],
  worksheet: ['calculators', 'machine', 'bikes', 'units', 'core'],
  lesson: ['worksheet', 'machine', 'units', 'core'],
  room: [],
  offline: ['base.ts'],
  search: ['base.ts', 'styles', 'offline'],
  scripts: ['record', 'units'],
  build: ['calculators', 'machine', 'bikes', 'units', 'core', 'checks', 'record', 'jobs', 'search', 'site.ts', 'styles', 'offline'],
  'components/calculator': ['calculators', 'drawing', 'machine', 'bikes', 'units', 'record', 'offline'],
  'components/room': ['calculators', 'drawing', 'machine', 'bikes', 'units', 'core', 'worksheet', 'room'],
  'components/prose': ['calculators', 'drawing', 'machine', 'bikes', 'units', 'checks', 'build', 'site.ts', 'base.ts', 'styles', 'components/calculator', 'components/room'],
  'components/procedure': ['calculators', 'drawing', 'machine', 'units', 'record', 'build', 'site.ts', 'components/prose', 'offline'],
  'components/record': ['machine', 'bikes', 'units', 'record', 'components/calculator', 'offline'],
  'components/job': ['calculators', 'machine', 'units', 'record', 'jobs', 'build', 'site.ts', 'components/calculator', 'components/procedure', 'offline'],
  'components/lesson': ['units', 'lesson', 'worksheet', 'site.ts', 'components/prose'],
  'components/worksheet': ['calculators', 'bikes', 'units', 'worksheet'],
  layouts: ['units', 'search', 'site.ts', 'styles', 'components/prose'],
  // pages put them together, and nothing points at a page
  pages: ['calculators', 'drawing', 'machine', 'bikes', 'checks', 'record', 'jobs', 'worksheet', 'lesson', 'search', 'build', 'site.ts', 'base.ts', 'styles', 'layouts', 'content.config.ts', 'components/calculator', 'components/prose', 'components/procedure', 'components/record', 'components/job', 'components/lesson', 'components/worksheet'],
  'base.ts': [],
  'site.ts': ['base.ts'],
  'content.config.ts': ['bikes', 'checks', 'record', 'jobs', 'lesson', 'build'],
  styles: [],
}

/** What each folder points at. */
const pointsAt = (room: string): string[] =>
  [...imports].filter(([file]) => roomOf(file) === room).flatMap(([, targets]) => targets.map(roomOf))

test('every folder of src and components has its place in the chain', () => {
  const rooms = [...readdirSync('src').filter((name) => name !== 'env.d.ts'), ...readdirSync('components').map((name) => `components/${name}`)]
  expect(rooms.sort()).toEqual(Object.keys(ALLOWED).sort())
})

test('every arrow that is allowed is there, so that a new one is thought about', () => {
  const idle = Object.entries(ALLOWED).flatMap(([room, all]) => all.filter((other) => !pointsAt(room).includes(other)).map((other) => `${room} → ${other}`))
  expect(idle).toEqual([])
})

test('no calculator points into the folder of another', () => {
  const folderOf = (file: string): string | undefined => /^src\/calculators\/([^/]+)\//.exec(file)?.[1]
  const wrong = [...imports].flatMap(([file, targets]) => targets.filter((target) => folderOf(file) && folderOf(target) && folderOf(file) !== folderOf(target)).map((target) => `${file} → ${target}`))
  expect(wrong).toEqual([])
})

test('a calculator’s statement needs none of its other parts, and its work none of its words or drawing', () => {
  const parts: Record<string, RegExp> = { 'statement.ts': /(?:solve|remarks|away|worker|answer|worked|questions)\.ts$|\.tsx$/, 'solve.ts': /(?:remarks|away|worker|answer|worked|questions)\.ts$|\.tsx$/, 'remarks.ts': /(?:away|worker|answer|worked|questions)\.ts$|\.tsx$/ }
  const wrong = [...imports].flatMap(([file, targets]) => targets.filter((target) => file.startsWith('src/calculators/') && parts[path.basename(file)]?.test(target)).map((target) => `${file} → ${target}`))
  expect(wrong).toEqual([])
})

test('the logic of the bench book does not know where it is stored', () => {
  const inStore = (file: string): boolean => file.startsWith('src/record/store/')
  const wrong = [...imports].flatMap(([file, targets]) => targets.filter((target) => file.startsWith('src/record/') && !inStore(file) && inStore(target)).map((target) => `${file} → ${target}`))
  expect(wrong).toEqual([])
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
