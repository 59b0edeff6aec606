/* Cuts the maths font to the characters that the formulas use, and to the signs that the text font has not: `npm run maths-font`. Run it when
   tests/site/fonts.test.ts says that a character is missing. */
import { readFile, writeFile } from 'node:fs/promises'
import subsetFont from 'subset-font'

const range = (first: number, last: number): string =>
  String.fromCodePoint(...Array.from({ length: last - first + 1 }, (_, index) => first + index))

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
  'ℓ',
  '±×÷·−∓∗∘√∑∏∫∂∇∞≈≠≡≤≥≪≫∝→⇒↦⟨⟩⌊⌋‖∣…⋯′″°µ²³½\u00a0\u2061\u2062\u2063\u2005\u2009\u200a\u200b',
].join('')

/** Signs in running text that Atkinson Hyperlegible Next has not; src/styles/base.css names the same ones. */
export const signs = 'ΓΔΣΩαβδεζηθλμνξπρστφω′″⁰⁴⁵⁶⁷⁸⁹⁺⁻ⁿ₀₁₂₃₄₅₆₇₈₉←↑→↓↶↷√≠≤≥⅝▸▾⚠✓'

async function cut(characters: string, name: string): Promise<void> {
  const whole = await readFile(
    new URL(
      '../../node_modules/@fontsource/stix-two-math/files/stix-two-math-latin-400-normal.woff2',
      import.meta.url,
    ),
  )
  const part = await subsetFont(whole, characters, { targetFormat: 'woff2' })
  await writeFile(new URL(`../styles/fonts/${name}.woff2`, import.meta.url), part)
  console.log(`${name}: STIX Two Math cut from ${whole.length} to ${part.length} bytes`)
}

if (import.meta.main) {
  await cut(characters, 'stix-two-math-subset')
  await cut(signs, 'signs-subset')
}
