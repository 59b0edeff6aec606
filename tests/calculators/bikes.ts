import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { parse } from 'yaml'
import type { BikeSpec } from '../../src/bikes/bikes.ts'

const folder = path.resolve('content/bikes')

/** The invented bikes, as the pages hand them to calculators. */
export const bikes: Record<string, BikeSpec> = Object.fromEntries(
  readdirSync(folder).map((file) => {
    const id = file.replace(/\.yaml$/, '')
    return [
      id,
      { id, ...(parse(readFileSync(path.join(folder, file), 'utf8')) as object) } as BikeSpec,
    ]
  }),
)
