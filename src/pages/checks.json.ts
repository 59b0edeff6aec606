import { loadBikes } from '../build/prose/bikes.ts'
import { linkOf } from '../build/prose/checkLink.ts'
import { outsideChecks } from '../build/prose/checkRun.ts'
import { path } from '../site.ts'

/** The same run as the checks page, for machines: values as published, ours in the published unit. */
export async function GET(): Promise<Response> {
  const run = await outsideChecks()
  const bikes = await loadBikes()
  const topics = await Promise.all(
    run.topics.map(async ({ topic, results }) => ({
      topic: topic.topic,
      checks: await Promise.all(
        results.map(async ({ check, core, values }) => {
          const link = await linkOf(check, bikes)
          const { id, title, call, source, where, provenance, note } = check
          return {
            id,
            title,
            call,
            core,
            with: check.with,
            source,
            where,
            provenance,
            note,
            calculator: check.calculator,
            link: link ? path(link.to) : undefined,
            values,
          }
        }),
      ),
    })),
  )
  return new Response(
    `${JSON.stringify({ distinct: run.distinct, values: run.values, failures: run.failures, topics }, plain, 1)}\n`,
    {
      headers: { 'content-type': 'application/json' },
    },
  )
}

/** JSON has no infinity; "infinite" degrees of freedom are said in words. */
function plain(_key: string, value: unknown): unknown {
  return value === Infinity ? 'infinite' : value
}
