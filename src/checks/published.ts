import { calls } from './calls.ts'
import { inputToSI, inUnitOf, readPrinted } from './quantity.ts'
import type { Check, CheckTopic, PublishedValue } from './schema.ts'

/** A published value beside ours, both in the published unit. */
export interface CheckedValue {
  what: string
  published: string
  unit: string
  /** null where the core gives no number or refuses */
  ours: number | null
  difference: number | null
  tolerance: number
  because: string
  passes: boolean
  /** whether it adds to the count of distinct outside values */
  counted: boolean
  problem?: string
}

export interface CheckResult {
  check: Check
  core: readonly string[]
  values: readonly CheckedValue[]
}

export interface CheckRun {
  topics: readonly { topic: CheckTopic; results: readonly CheckResult[] }[]
  /** distinct outside values: a factor and its inverse, and one number from two prints, count once */
  distinct: number
  values: number
  failures: readonly string[]
}

/** Runs every check; nothing throws: what fails is listed by name. */
export function runChecks(topics: readonly CheckTopic[]): CheckRun {
  const seen = new Set<string>()
  const run = [...topics]
    .sort((a, b) => a.order - b.order)
    .map((topic) => ({ topic, results: topic.checks.map((check) => runCheck(check, seen)) }))
  const results = run.flatMap(({ results }) => results)
  const values = results.flatMap((result) => result.values)
  const failures = results.flatMap(({ check, values }) =>
    values.filter(({ passes }) => !passes).map((value) => `${check.id}: ${describeFailure(value)}`),
  )
  return {
    topics: run,
    distinct: values.filter(({ counted }) => counted).length,
    values: values.length,
    failures,
  }
}

function describeFailure({
  what,
  published,
  ours,
  difference,
  tolerance,
  problem,
}: CheckedValue): string {
  return problem
    ? `${what}: ${problem}`
    : `${what} is published as ${published}, ours is ${ours}, off by ${difference}; allowed ${tolerance}`
}

function runCheck(check: Check, seen: Set<string>): CheckResult {
  const called = calls[check.call]
  const input = inputToSI(check.with ?? {})
  const answer =
    called === undefined
      ? new RangeError(`there is no call “${check.call}”`)
      : attempt(() => called.run(input))
  const values = check.expect.map((value) => {
    const key = identity(check, input, value)
    const counted = check.uncounted === undefined && value.sameAs === undefined && !seen.has(key)
    if (check.uncounted === undefined) seen.add(key)
    return compare(check, value, answer, counted)
  })
  return { check, core: called?.core ?? [], values }
}

function attempt(run: () => unknown): unknown {
  try {
    return run()
  } catch (error) {
    return error instanceof Error ? error : new Error(String(error))
  }
}

function compare(
  check: Check,
  value: PublishedValue,
  answer: unknown,
  counted: boolean,
): CheckedValue {
  const because = value.because ?? check.because ?? ''
  const printed = readPrinted(value.is)
  const base = {
    what: value.what,
    published: String(value.is),
    unit: printed?.unit ?? '',
    tolerance: value.tolerance,
    because,
    counted,
  }
  const si = answer instanceof Error ? answer : pick(answer, value.of)
  if (printed === null || typeof si !== 'number' || !Number.isFinite(si)) {
    const problem =
      printed === null
        ? 'the published value is no number'
        : si instanceof Error
          ? si.message
          : `the core gives no number at “${value.of ?? ''}”`
    return { ...base, ours: null, difference: null, passes: false, problem }
  }
  const ours = inUnitOf(si, printed)
  const difference = ours - printed.value
  return { ...base, ours, difference, passes: Math.abs(difference) <= value.tolerance }
}

function pick(answer: unknown, path: string | undefined): unknown {
  if (path === undefined) return answer
  return path
    .split('.')
    .reduce<unknown>(
      (part, key) =>
        typeof part === 'object' && part !== null
          ? (part as Record<string, unknown>)[key]
          : undefined,
      answer,
    )
}

/** Two values are one when the same call with the same inputs gives them; a unit is one with its inverse. */
function identity(check: Check, input: unknown, value: PublishedValue): string {
  if (check.call === 'unit')
    return `unit ${[readPrinted(check.with?.['of'])?.unit ?? '', readPrinted(value.is)?.unit ?? ''].sort().join(' ')}`
  return `${check.call} ${JSON.stringify(input, (_key, entry: unknown) => (typeof entry === 'number' ? entry.toPrecision(10) : entry))} ${value.of ?? ''}`
}
