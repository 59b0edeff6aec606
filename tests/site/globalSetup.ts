import { mkdirSync } from 'node:fs'
import path from 'node:path'
import { findChromium } from './browser.ts'

/** Finds the browser before any test starts: two first starts at once would unpack the packaged one over each other. */
export default async function setup(): Promise<void> {
  const scratch = path.resolve('.cache/tmp')
  mkdirSync(scratch, { recursive: true })
  process.env['TMPDIR'] = scratch
  process.env['CHROME_PATH'] = await findChromium()
}
