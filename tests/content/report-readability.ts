/** Sentence length and reading grade of every chapter of the built site: `npm run readability`. */
import { readdirSync, readFileSync } from 'node:fs'
import { readability, sentencesOf } from './readability.ts'

for (const id of readdirSync('dist/chapters').filter((name) => !name.endsWith('.html'))) {
  const sentences = sentencesOf(readFileSync(`dist/chapters/${id}/index.html`, 'utf8'))
  const { words, sentenceLength, grade } = readability(sentences)
  const longest = sentences.reduce((long, each) => (each.length > long.length ? each : long), '')
  console.log(`${id.padEnd(24)} ${String(words).padStart(5)} words  ${sentenceLength.toFixed(1).padStart(5)} words a sentence  grade ${grade.toFixed(1).padStart(5)}  longest: ${longest.slice(0, 140)}`)
}
