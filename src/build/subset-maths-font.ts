/* Cuts the maths font to the characters that the formulas use: `npm run maths-font`. Run it when tests/site/maths.test.ts says that a character is missing. */
import { readFile, writeFile } from 'node:fs/promises'
import subsetFont from 'subset-font'

const range = (first: number, last: number): string => String.fromCodePoint(...Array.from({ length: last - first + 1 }, (_, index) => first + index))

/** Upright ASCII and Greek, their mathematical italics, operators, arrows and stretching brackets. */
export const characters = [
  range(0x20, 0x7e),
  range(0x391, 0x3a9).replace('\u03a2', ''),
  range(0x3b1, 0x3c9),
  'ϑϕϵ',
  range(0x1d434, 0x1d454),
  'ℎ',
  range(0x1d456, 0x1d467),
  range(0x1d6e2, 0x1d71b),
  '±×÷·−∓∗∘√∑∏∫∂∇∞≈≠≡≤≥≪≫∝→⇒↦⟨⟩⌊⌋‖∣…⋯′″°µ²³½\u00a0\u2061\u2062\u2063\u2009\u200b',
].join('')

if (import.meta.main) {
  const whole = await readFile(new URL('../../node_modules/@fontsource/stix-two-math/files/stix-two-math-latin-400-normal.woff2', import.meta.url))
  const cut = await subsetFont(whole, characters, { targetFormat: 'woff2' })
  await writeFile(new URL('../styles/fonts/stix-two-math-subset.woff2', import.meta.url), cut)
  console.log(`STIX Two Math cut from ${whole.length} to ${cut.length} bytes`)
}
