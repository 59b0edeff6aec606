/* Which steps of a job apply. What is not answered, or answered "I don't know", rules nothing out. */

/** Answers by the question's id. */
export type Answers = Readonly<Record<string, string>>

/** For each question named, the answers with which something applies. */
export type When = Readonly<Record<string, readonly string[]>>

/** The answer of someone who can't tell. */
export const UNKNOWN = 'unknown'

/** Whether something with this condition applies; without a condition it always does. */
export function applies(when: When | undefined, answers: Answers): boolean {
  return Object.entries(when ?? {}).every(([ask, wanted]) => {
    const answer = answers[ask]
    return answer === undefined || answer === UNKNOWN || wanted.includes(answer)
  })
}

/** Several conditions that all have to hold, as one. */
export function allOf(whens: readonly When[]): When {
  const joined: Record<string, readonly string[]> = {}
  for (const when of whens)
    for (const [ask, wanted] of Object.entries(when))
      joined[ask] = joined[ask]?.filter((answer) => wanted.includes(answer)) ?? wanted
  return joined
}

/** The answers in an address's query: only those that the job asks for and offers. */
export function answersIn(
  query: URLSearchParams,
  offered: Readonly<Record<string, readonly string[]>>,
): Answers {
  return Object.fromEntries(
    Object.entries(offered).flatMap(([ask, options]) => {
      const answer = query.get(ask)
      return answer !== null && options.includes(answer) ? [[ask, answer]] : []
    }),
  )
}

/** The query with these answers in place of the old ones; what else it holds stays. */
export function queryWith(
  query: URLSearchParams,
  offered: Readonly<Record<string, readonly string[]>>,
  answers: Answers,
): URLSearchParams {
  const changed = new URLSearchParams(query)
  for (const ask of Object.keys(offered)) {
    const answer = answers[ask]
    if (answer === undefined) changed.delete(ask)
    else changed.set(ask, answer)
  }
  return changed
}
