const VOWEL = /[aeiouy]/

/** Takes the ending off where a vowel stays before it; a doubled last letter becomes one (`cutting` gives `cut`). */
function without(word: string, ending: string): string | undefined {
  if (!word.endsWith(ending)) return undefined
  const root = word.slice(0, -ending.length)
  if (root.length < 3 || !VOWEL.test(root)) return undefined
  return /([bdgmnprt])\1$/.test(root) ? root.slice(0, -1) : root
}

/**
 * The root by which forms of one word find one another: plural, -ing, -ed, -ly and a last e go.
 * Comparatives stay, because `rider` must not become `ride`.
 */
export function stem(word: string): string {
  let root = word
  if (/[^su]s$/.test(root) && root.length > 3)
    root = root.endsWith('ies')
      ? `${root.slice(0, -3)}y`
      : root.replace(/(?<=x|ch|sh|ss)es$|s$/, '')
  root = without(root, 'ing') ?? without(root, 'ed') ?? without(root, 'ly') ?? root
  if (root.length > 3) root = root.replace(/e$/, '')
  return root.replace(/(?<=[^aeiou].*)y$/, 'i')
}
