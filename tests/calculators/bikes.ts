import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { parse } from 'yaml'
import { inSI } from '../../src/bikes/inSI.ts'
import type { BikeSpec } from '../../src/bikes/inSI.ts'
import { readSheet } from '../../src/bikes/sheet.ts'
import type { BikeSheets } from '../../src/bikes/sheet.ts'

const folder = path.resolve('content/bikes')

/** The invented bikes' sheets, as the pages hand them to calculators. */
export const bikes: BikeSheets = Object.fromEntries(
  readdirSync(folder).map((file) => {
    const id = file.replace(/\.yaml$/, '')
    return [id, readSheet(id, parse(readFileSync(path.join(folder, file), 'utf8')))]
  }),
)

/** The same bikes in SI. */
export const specs: Readonly<Record<string, BikeSpec>> = Object.fromEntries(
  Object.entries(bikes).map(([id, sheet]) => [id, inSI(sheet)]),
)
