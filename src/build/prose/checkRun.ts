import { getCollection } from 'astro:content'
import { runChecks, type CheckRun } from '../../checks/published.ts'

let run: Promise<CheckRun> | null = null

/** All checks against the world outside, run once a build. A check that fails stops the build, and so does one that names no known source. */
export function outsideChecks(): Promise<CheckRun> {
  run ??= runAll()
  return run
}

async function runAll(): Promise<CheckRun> {
  const [topics, sources] = await Promise.all([getCollection('checks'), getCollection('sources')])
  const result = runChecks(topics.map(({ data }) => data))
  const known = new Set(sources.map(({ id }) => id))
  const strays = topics.flatMap(({ data }) =>
    data.checks
      .filter(({ source }) => !known.has(source))
      .map(({ id, source }) => `${id}: there is no source “${source}”`),
  )
  const problems = [...result.failures, ...strays]
  if (problems.length > 0)
    throw new Error(
      `content/checks: ${problems.length} of ${result.values} values fail\n${problems.join('\n')}`,
    )
  return result
}
