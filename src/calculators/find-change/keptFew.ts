/** Makes what is asked for once, and keeps the last few by their keys. */
export function keptFew<Of, Made>(
  most: number,
  make: (of: Of) => Made,
): (key: string, of: Of) => Made {
  const kept = new Map<string, Made>()
  return (key, of) => {
    const made = kept.get(key) ?? make(of)
    // the one asked for last goes last, so that the first is the one to forget
    kept.delete(key)
    kept.set(key, made)
    if (kept.size > most) kept.delete(kept.keys().next().value!)
    return made
  }
}
