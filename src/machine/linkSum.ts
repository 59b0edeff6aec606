/** The key of a link that holds its check sum. It comes near the start, so that a link cut short still has it. */
export const SUM_KEY = 'sum'

const [OFFSET, PRIME] = [0x811c9dc5, 0x01000193]
/** Digits and letters of a sum: one mangled link in 46,656 goes unseen. */
const LENGTH = 3

/** A sum of all that a query says besides the sum itself (FNV-1a, 32 bits, public domain), in three digits or small letters. */
export function linkSum(query: URLSearchParams): string {
  const text = [...query]
    .filter(([key]) => key !== SUM_KEY)
    .map(([key, value]) => `${key}=${value}`)
    .join('&')
  let hash = OFFSET
  for (const byte of new TextEncoder().encode(text)) hash = Math.imul(hash ^ byte, PRIME)
  return (hash >>> 0).toString(36).padStart(LENGTH, '0').slice(-LENGTH)
}

/** What to say of a link that is not as it was made; undefined where it is, or was written by hand without a sum. */
export function sumProblem(query: URLSearchParams): string | undefined {
  const sum = query.get(SUM_KEY)
  if (sum === null || sum === linkSum(query)) return undefined
  return 'This link was cut or changed after it was made, so some values may not be those that were sent. Check each one, or ask for the link again'
}
