/** What of a step a tick vouches for. */
export interface StepText {
  do: string
  detail?: string | undefined
  cautions: readonly string[]
}

const OFFSET = 0xcbf29ce484222325n
const PRIME = 0x100000001b3n
const MASK = 0xffffffffffffffffn

/**
 * A short fingerprint of a step's words and cautions: FNV-1a, 64 bits (IETF draft-eastlake-fnv). A tick is kept with it, so that a step which
 * reads differently in a later edition is not taken for done. Line breaks and runs of spaces don't count.
 */
export function stepHash(step: StepText): string {
  const text = [step.do, step.detail ?? '', step.cautions.join(' ')]
    .map((part) => part.replace(/\s+/g, ' ').trim())
    .join('\n')
  return fingerprint(text)
}

/** FNV-1a, 64 bits, of a text, in base 36. */
export function fingerprint(text: string): string {
  let hash = OFFSET
  for (const byte of new TextEncoder().encode(text)) hash = ((hash ^ BigInt(byte)) * PRIME) & MASK
  return hash.toString(36)
}
