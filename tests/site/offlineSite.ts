import { cpSync, readFileSync, writeFileSync } from 'node:fs'
import { createServer } from 'node:http'
import type { Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import path from 'node:path'
import { Bundle } from '../../src/build/bundle.ts'
import { writeOffline } from '../../src/build/offline.ts'
import { createSiteServer } from '../../src/build/serve.ts'

/* A server whose line can be cut, and whose site can be replaced by another edition: a browser's own switch does not reach a service worker. */

export interface Line {
  origin: string
  /** serves another folder from now on */
  serve(folder: string): Promise<void>
  cut(): void
  mend(): void
  close(): void
}

/** Serves a folder under a base; while the line is cut, every connection breaks off. */
export async function openLine(folder: string, base = '/'): Promise<Line> {
  let site: Server = await createSiteServer(folder, base)
  let whole = true
  const server = createServer((request, response) => {
    if (whole) site.emit('request', request, response)
    else request.socket.destroy()
  })
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done))
  return {
    origin: `http://127.0.0.1:${(server.address() as AddressInfo).port}`,
    async serve(other) {
      site = await createSiteServer(other, base)
    },
    cut: () => void (whole = false),
    mend: () => void (whole = true),
    close() {
      server.closeAllConnections()
      server.close()
    },
  }
}

/** Another edition of the built site, in a folder of its own: the words of one page differ. */
export async function anotherEdition(page: string, from: string, to: string): Promise<string> {
  const folder = path.resolve('.cache/tmp/another-edition')
  cpSync('dist', folder, { recursive: true })
  const file = path.join(folder, page, 'index.html')
  const html = readFileSync(file, 'utf8')
  if (!html.includes(from)) throw new Error(`${page} does not say “${from}”`)
  writeFileSync(file, html.replace(from, to))
  await writeOffline(folder, await Bundle.read())
  return folder
}
