import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import ts from 'typescript'

/* Which names of the core other code uses, read from the syntax: an import that is bound, a call of what it binds. A mention in a comment or a title is neither. */

const SOURCE = /\.(?:ts|tsx)$/

/** Every TypeScript file below a folder, and the script part of every Astro file. */
export const filesBelow = (folder: string, ending = SOURCE): string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .map((file) => path.posix.join(folder, file))
    .filter((file) => ending.test(file))

/** An Astro file's code is between its two lines of three hyphens. */
const codeOf = (file: string): string => {
  const text = readFileSync(file, 'utf8')
  return file.endsWith('.astro') ? (text.split(/^---$/m)[1] ?? '') : text
}

export const parsed = (file: string): ts.SourceFile =>
  ts.createSourceFile(file, codeOf(file), ts.ScriptTarget.Latest, true)

const within = (folder: string, file: string, from: string): boolean =>
  path.posix.join(path.posix.dirname(file), from).startsWith(`${folder}/`)

/** By the name that a file gives it, each value that it imports from below a folder, by its own name; `*` is all of them. */
export function importedFrom(
  folder: string,
  file: string,
  source = parsed(file),
): Map<string, string> {
  const found = new Map<string, string>()
  for (const statement of source.statements) {
    if (!ts.isImportDeclaration(statement) || !ts.isStringLiteral(statement.moduleSpecifier))
      continue
    const bindings = statement.importClause?.namedBindings
    if (!within(folder, file, statement.moduleSpecifier.text) || bindings === undefined) continue
    if (ts.isNamespaceImport(bindings)) found.set(bindings.name.text, '*')
    else
      for (const { name, propertyName } of bindings.elements)
        found.set(name.text, (propertyName ?? name).text)
  }
  return found
}

export function visit(node: ts.Node, see: (node: ts.Node) => void): void {
  see(node)
  node.forEachChild((child) => {
    visit(child, see)
  })
}

/** The imported names that a file calls: itself, as a tag, or through a namespace. */
export function calledFrom(folder: string, file: string): Set<string> {
  const source = parsed(file)
  const imported = importedFrom(folder, file, source)
  const called = new Set<string>()
  visit(source, (node) => {
    if (!ts.isCallExpression(node) && !ts.isNewExpression(node)) return
    const { expression } = node
    if (ts.isIdentifier(expression)) called.add(imported.get(expression.text) ?? '')
    if (
      ts.isPropertyAccessExpression(expression) &&
      ts.isIdentifier(expression.expression) &&
      imported.get(expression.expression.text) === '*'
    )
      called.add(expression.name.text)
  })
  return called
}

const declaredNames = (statement: ts.Statement): string[] => {
  if (ts.isVariableStatement(statement))
    return statement.declarationList.declarations.map(({ name }) => name.getText())
  const named = ts.isFunctionDeclaration(statement) || ts.isClassDeclaration(statement)
  return named && statement.name ? [statement.name.text] : []
}

/** By top-level name of a folder's files, the other top-level names that its declaration refers to. */
export function references(folder: string): Map<string, Set<string>> {
  const found = new Map<string, Set<string>>()
  for (const file of filesBelow(folder)) {
    const source = parsed(file)
    const imported = importedFrom(folder, file, source)
    const local = new Set(source.statements.flatMap(declaredNames))
    for (const statement of source.statements) {
      const names = new Set<string>()
      visit(statement, (node) => {
        if (!ts.isIdentifier(node)) return
        if (local.has(node.text)) names.add(`${file} ${node.text}`)
        const other = imported.get(node.text)
        if (other !== undefined) names.add(other)
      })
      for (const name of declaredNames(statement)) {
        found.set(`${file} ${name}`, names)
        const exported = ts.canHaveModifiers(statement) && ts.getModifiers(statement)?.length
        // an exported name is the same throughout the folder
        if (!exported) continue
        names.add(name)
        found.set(name, new Set([`${file} ${name}`]))
      }
    }
  }
  return found
}

/** All that is reached from some names by references. */
export function reached(
  from: Iterable<string>,
  by: ReadonlyMap<string, ReadonlySet<string>>,
): Set<string> {
  const found = new Set<string>()
  const open = [...from]
  for (let name = open.pop(); name !== undefined; name = open.pop()) {
    if (found.has(name)) continue
    found.add(name)
    open.push(...(by.get(name) ?? []))
  }
  return found
}
