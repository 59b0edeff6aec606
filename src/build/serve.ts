/* Serves the built site: `npm run preview`, and the tests. Applies public/_headers, as a host does. */
import { existsSync } from 'node:fs'
import { readFile } from 'node:fs/promises'
import { createServer } from 'node:http'
import type { IncomingMessage, Server, ServerResponse } from 'node:http'
import path from 'node:path'
import sirv from 'sirv'
import { basePath } from './address.ts'

type Headers = Record<string, string>

/** Reads the host's header file: an indented "Name: value" under each path pattern; only "/*" and exact paths are used here. */
export function parseHeaders(text: string): { pattern: string; headers: Headers }[] {
  const rules: { pattern: string; headers: Headers }[] = []
  for (const line of text.split('\n')) {
    if (/^\S/.test(line) && !line.startsWith('#')) rules.push({ pattern: line.trim(), headers: {} })
    const header = /^\s+([\w-]+):\s*(.+)$/.exec(line)
    if (header) rules.at(-1)!.headers[header[1]!] = header[2]!
  }
  return rules
}

const matches = (pattern: string, address: string): boolean =>
  pattern.endsWith('*') ? address.startsWith(pattern.slice(0, -1)) : pattern === address

/** A server for a built folder under `base` ("/" or "/sub/path/"). What is not there gets 404.html. */
export async function createSiteServer(root: string, base = '/'): Promise<Server> {
  const rules = parseHeaders(await readFile(path.join(root, '_headers'), 'utf8').catch(() => ''))
  const notFound = await readFile(path.join(root, '404.html')).catch(() => 'Not found')
  const setHeaders = (response: ServerResponse, address: string): void => {
    const found = rules.filter(({ pattern }) => matches(pattern, address))
    for (const [name, value] of found.flatMap(({ headers }) => Object.entries(headers)))
      response.setHeader(name, value)
  }
  // `dev` looks at the folder for each request: a build may replace it while the server runs
  const files = sirv(root, { dev: true, etag: true, extensions: ['html'], setHeaders })
  const refuse = (response: ServerResponse, address: string): void => {
    setHeaders(response, address)
    response.writeHead(404, { 'content-type': 'text/html; charset=utf-8' }).end(notFound)
  }
  return createServer((request: IncomingMessage, response) => {
    const { pathname, search } = new URL(request.url ?? '/', 'http://localhost')
    if (!pathname.startsWith(base)) return refuse(response, '/')
    const address = `/${pathname.slice(base.length)}`
    if (!address.endsWith('/') && existsSync(path.join(root, address, 'index.html'))) {
      response.writeHead(301, { location: `${pathname}/${search}` }).end()
      return
    }
    request.url = address + search
    files(request, response, () => refuse(response, address))
  })
}

if (import.meta.main) {
  const root = path.resolve('dist')
  const base = basePath(process.env)
  const port = Number(process.env['PORT'] ?? 4321)
  const server = await createSiteServer(root, base)
  server.on('error', (error: NodeJS.ErrnoException) => {
    console.error(
      error.code === 'EADDRINUSE'
        ? `Port ${port} is in use. Choose another: PORT=4322 npm start`
        : error.message,
    )
    process.exit(1)
  })
  server.listen(port, () => console.log(`Witness Mark is at http://localhost:${port}${base}`))
}
