/* Serves the built site: `npm run preview`, and the tests. Applies public/_headers, as a host does. */
import { createReadStream } from 'node:fs'
import { readFile, stat } from 'node:fs/promises'
import { createServer } from 'node:http'
import type { IncomingMessage, Server, ServerResponse } from 'node:http'
import path from 'node:path'

const TYPES: Record<string, string> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.xml': 'application/xml; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.woff2': 'font/woff2',
  '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json',
}

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

const matches = (pattern: string, address: string): boolean => (pattern.endsWith('*') ? address.startsWith(pattern.slice(0, -1)) : pattern === address)

async function fileFor(root: string, address: string): Promise<string | null> {
  const wanted = path.join(root, path.normalize(decodeURIComponent(address)))
  if (!wanted.startsWith(root)) return null
  const found = await stat(wanted).catch(() => null)
  if (found?.isFile()) return wanted
  const index = path.join(wanted, 'index.html')
  return found?.isDirectory() && (await stat(index).catch(() => null)) ? index : null
}

/** A server for a built folder under `base` ("/" or "/sub/path/"). */
export async function createSiteServer(root: string, base = '/'): Promise<Server> {
  const rules = parseHeaders(await readFile(path.join(root, '_headers'), 'utf8').catch(() => ''))
  const answer = async (request: IncomingMessage, response: ServerResponse): Promise<void> => {
    const url = new URL(request.url ?? '/', 'http://localhost')
    const inside = url.pathname.startsWith(base) ? `/${url.pathname.slice(base.length)}` : null
    const file = inside === null ? null : await fileFor(root, inside)
    if (file?.endsWith('index.html') && !url.pathname.endsWith('/') && !url.pathname.endsWith('.html')) {
      response.writeHead(301, { location: `${url.pathname}/${url.search}` }).end()
      return
    }
    const served = file ?? path.join(root, '404.html')
    const headers = Object.assign({}, ...rules.filter(({ pattern }) => matches(pattern, inside ?? '/')).map((rule) => rule.headers)) as Headers
    response.writeHead(file ? 200 : 404, { ...headers, 'content-type': TYPES[path.extname(served)] ?? 'application/octet-stream' })
    createReadStream(served)
      .on('error', () => response.end())
      .pipe(response)
  }
  return createServer((request, response) => {
    answer(request, response).catch(() => response.writeHead(400).end())
  })
}

if (import.meta.main) {
  const root = path.resolve('dist')
  const base = (process.env['BASE_PATH'] ?? '/').replace(/\/?$/, '/')
  const port = Number(process.env['PORT'] ?? 4321)
  const server = await createSiteServer(root, base)
  server.on('error', (error: NodeJS.ErrnoException) => {
    console.error(error.code === 'EADDRINUSE' ? `Port ${port} is in use. Choose another: PORT=4322 npm start` : error.message)
    process.exit(1)
  })
  server.listen(port, () => console.log(`Witness Mark is at http://localhost:${port}${base}`))
}
