import { existsSync, mkdirSync, writeFileSync } from 'node:fs'
import { calculatorIds, loadCalculator } from '../calculators/index.ts'
import { templates } from './newCalculatorFiles.ts'

/* npm run new -- <id>: writes a calculator's folder and its page, which work as they are. Existing files are never touched. */

const ID = /^[a-z][a-z0-9]*(?:-[a-z0-9]+)*$/

function refuse(why: string): never {
  console.error(why)
  process.exit(1)
}

const id = process.argv[2] ?? ''
if (!ID.test(id))
  refuse(
    `npm run new -- <id>: an id is small letters and hyphens, such as chain-slack; got “${id}”`,
  )
if (calculatorIds.includes(id) || existsSync(`src/calculators/${id}`))
  refuse(`there is a calculator “${id}” already: choose another id`)

const order = 10 + Math.max(...calculatorIds.map((known) => loadCalculator(known).order))
mkdirSync(`src/calculators/${id}`)
for (const [file, text] of Object.entries(templates(id, order))) {
  if (existsSync(file)) refuse(`${file} exists already: remove it first`)
  writeFileSync(file, text)
  console.log(`wrote ${file}`)
}
console.log(`Fill them in, then put <Calculator id="${id}" /> into a chapter.`)
