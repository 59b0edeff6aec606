/** Length, rhythm and reading grade of every chapter of the built site: `npm run readability`, with a chapter's id also its shortest and longest sentences. */
import process from 'node:process'
import { readdirSync, readFileSync } from 'node:fs'
import { readability, runningSentences, sentencesOf } from './readability.ts'

const wanted = process.argv.slice(2)
console.log('chapter                   words  words a sentence  spread  six or fewer  grade')
for (const id of readdirSync('dist/chapters').filter((name) => !name.endsWith('.html') && (wanted.length === 0 || wanted.includes(name)))) {
  const html = readFileSync(`dist/chapters/${id}/index.html`, 'utf8')
  const running = runningSentences(html)
  if (running.length < 20) continue
  const { sentenceLength, spread, short, grade } = readability(running)
  const { words } = readability(sentencesOf(html))
  console.log(`${id.padEnd(24)} ${String(words).padStart(6)}  ${sentenceLength.toFixed(1).padStart(16)}  ${spread.toFixed(1).padStart(6)}  ${(short * 100).toFixed(0).padStart(10)} %  ${grade.toFixed(1).padStart(5)}`)
  if (wanted.length === 0) continue
  for (const sentence of running) if (sentence.split(' ').length <= 6) console.log(`    short: ${sentence}`)
  for (const sentence of running) if (sentence.split(' ').length >= 32) console.log(`    long:  ${sentence}`)
}
