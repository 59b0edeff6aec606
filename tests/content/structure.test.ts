import { existsSync, readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, test } from 'vitest'

function filesUnder(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.(ts|tsx|astro)$/.test(entry.name))
    .map((entry) => path.join(entry.parentPath, entry.name))
}

/** Files that a file imports by a relative path, from the project's root. */
function importsOf(file: string): string[] {
  const text = readFileSync(file, 'utf8')
  const found = [...text.matchAll(/(?:import|export)\b[^'"`;]*?\bfrom\s*['"](\.[^'"]+)['"]|import\(\s*['"](\.[^'"]+)['"]\s*\)|^import\s+['"](\.[^'"]+)['"]/gm)]
  return found.map((match) => path.normalize(path.join(path.dirname(file), match[1] ?? match[2] ?? match[3]!)))
}

/** Where each folder may point: content → components → calculators → core, and the pages put them together. */
const ALLOWED: Record<string, RegExp> = {
  'src/core': /^src\/core\//,
  'src/calculators': /^src\/(calculators|core)\//,
  'components/figures': /^(components\/figures|src\/calculators)\//,
  'components/calculator': /^(components\/(calculator|figures)|src\/calculators)\//,
  'src/search': /^src\/(search|calculators|site\.ts|styles)/,
  'src/record': /^src\/(record|calculators)\//,
}

describe.each(Object.entries(ALLOWED))('%s', (folder, allowed) => {
  test('points only down the chain', () => {
    const wrong = filesUnder(folder).flatMap((file) => importsOf(file).filter((target) => !allowed.test(target)).map((target) => `${file} → ${target}`))
    expect(wrong).toEqual([])
  })
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
    const named = [...text.matchAll(/npm (?:run )?([a-z][\w-]*)/g)].map((match) => match[1]!).filter((name) => !['run', 'ci', 'exec', 'install', 'package', 'scripts', 'script'].includes(name))
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
