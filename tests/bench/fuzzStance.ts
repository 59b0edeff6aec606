/** Solves 20,000 random bikes, or as many as the first argument says, and reports any that does not balance: `node tests/bench/fuzz-stance.ts`. */
import { findBalance } from '../../src/core/newton.ts'
import { DomainError } from '../../src/core/domain.ts'
import { setScene } from '../../src/core/scene.ts'
import { solveStance } from '../../src/core/stance.ts'
import { randomCase, stream } from '../core/bikes.ts'
import { leftOver } from '../core/stanceBalance.ts'

const count = Number(process.argv[2] ?? 20000)
const next = stream(20000)
const outcomes = new Map<string, number>()
const note = (what: string): void => void outcomes.set(what, (outcomes.get(what) ?? 0) + 1)
let worst = 0
let most = 0
for (let i = 0; i < count; i++) {
  const { bike, loadCase, settle } = randomCase(next)
  try {
    const stance = solveStance(bike, loadCase, { settle })
    const { front, rear } = leftOver(bike, loadCase, settle, stance)
    const off = Math.max(Math.abs(front), Math.abs(rear))
    if (!(off <= 1e-6)) {
      note('does not balance')
      console.log(i, off, stance.frontStop, stance.rearStop, stance.frontTravel, stance.frontLimit)
    }
    worst = Math.max(worst, off)
    const { evaluations } = findBalance(setScene(bike, loadCase, settle))
    most = Math.max(most, evaluations)
    note(`front ${stance.frontStop}, rear ${stance.rearStop}`)
    if (stance.frontLimit.cause === 'locked') note('fork that can lock')
    if (evaluations > 15) note('needed the bracketed search')
  } catch (error) {
    if (!(error instanceof DomainError)) throw error
    note(`refused: ${error.parameter} ${error.reason.slice(0, 60)}`)
  }
}
console.log(`${count} bikes, worst left over ${worst.toExponential(1)} N, most evaluations ${most}`)
for (const [what, times] of [...outcomes].sort((a, b) => b[1] - a[1]))
  console.log(String(times).padStart(7), what)
if ((outcomes.get('does not balance') ?? 0) > 0) process.exitCode = 1
