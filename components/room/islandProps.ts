/** What an island's attribute holds: pairs of a kind and a value, a list being kind 1; nothing else is used here. */
function decoded(pair: unknown): unknown {
  if (!Array.isArray(pair)) return pair
  const [kind, value] = pair as [number, unknown]
  if (kind === 1 && Array.isArray(value)) return value.map(decoded)
  if (typeof value === 'object' && value !== null)
    return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, decoded(each)]))
  return value
}

/** The properties that the build wrote for the calculator in a place of the page. */
export function islandProps(place: Element): Record<string, unknown> {
  const text = place.querySelector('astro-island')?.getAttribute('props') ?? '{}'
  const raw: unknown = JSON.parse(text)
  return Object.fromEntries(
    Object.entries(raw as Record<string, unknown>).map(([key, value]) => [key, decoded(value)]),
  )
}
