import { calls } from './calls.ts'
import { inputToSI, inUnitOf, readPrinted } from './quantity.ts'
import type { Given } from '../machine/given.ts'

/** How far the published value was seen when the check was written down. */
export type Provenance = 'printed' | 'public-text' | 'transcription' | 'memory' | 'practice'

/** One published value: what it is, as printed with its unit, and how far a right answer may lie from it [that unit]. */
export interface PublishedValue {
  what: string
  /** path into the call's result ("front", "M.0.1"); absent where the result is the value */
  of?: string
  is: string | number
  tolerance: number
  /** why the tolerance is that wide; absent: the check's own */
  because?: string
  /** "id/what" of the value of which this is another form (the other side of a symmetric matrix, the same number rounded): shown, not counted */
  sameAs?: string
}

/** One call of the core, with the published values that it must reproduce. */
export interface Check {
  id: string
  title: string
  call: string
  /** inputs by name, with units ("0.037 in") */
  with?: Readonly<Record<string, unknown>>
  expect: readonly PublishedValue[]
  because?: string
  source: string
  where?: string
  provenance: Provenance
  note?: string
  /** the calculator that answers this question; with `given`, its inputs for a link, in its own units */
  calculator?: string
  given?: Given
  /** why it is shown and not counted, though it is computed and must hold */
  uncounted?: Uncounted
}

/** Why a value is no outside value: worked out here by the source's formula; from an input that was worked out from the result; true of any numbers; a definition against itself. */
export type Uncounted = 'evaluated' | 'round-trip' | 'theorem' | 'definition'

/** One file of content/checks. */
export interface CheckTopic {
  topic: string
  order: number
  about: string
  checks: readonly Check[]
}

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
      : attempt(() => called.run(input as never))
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
