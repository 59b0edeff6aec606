import { runSecondMethod, secondFailures } from '../checks/second/run.ts'
import type { SecondRun } from '../checks/second/run.ts'
import { PART_ALLOWED, runParts } from '../checks/second/parts.ts'
import type { PartRun } from '../checks/second/parts.ts'

/** So many bikes are settled twice in each build. */
const BIKES = 200
const PARTS = 20

let run: SecondRun | null = null
let parts: readonly PartRun[] | null = null

/** Random bikes settled by both methods, once a build. A build in which they disagree stops. */
export function secondRun(): SecondRun {
  run ??= runSecondMethod(BIKES)
  const failures = secondFailures(run)
  if (failures.length > 0) throw new Error(`src/checks/second: ${failures.join('; ')}`)
  return run
}

/** Single functions by both methods, once a build. A build in which one disagrees stops. */
export function secondParts(): readonly PartRun[] {
  parts ??= runParts(PARTS)
  const failures = parts.filter(({ apart }) => !(apart <= PART_ALLOWED))
  if (failures.length > 0)
    throw new Error(`src/checks/second: ${failures.map(({ name }) => name).join(', ')} disagree`)
  return parts
}
