import { MEANS } from '../../core/index.ts'
import type { FoundChange, MeanId } from '../../core/index.ts'
import type { OutputOf } from '../../machine/values.ts'
import { defineWork } from '../../machine/work.ts'
import { type Picture, pictureOf } from './picture.ts'
import { search, type Solved } from './search.ts'
import type statement from './statement.ts'

export type { Picture, ToldAim, ToldChange, ToldWay } from './picture.ts'

const usedBy = (change: FoundChange['ways'][number]['change']): MeanId[] =>
  MEANS.filter((mean) => change[mean] !== undefined)

function verdictOf({ ways, meets, alreadyThere }: FoundChange) {
  if (alreadyThere) return 'there'
  if (meets) return 'ways'
  const [first] = ways
  return first === undefined || usedBy(first.change).length === 0 ? 'none' : 'nearest'
}

/** SI in, SI out. */
function compute({ found }: Solved): OutputOf<typeof statement> {
  const [first] = found.ways
  const change = first?.change ?? {}
  const readings = first?.readings ?? {}
  return {
    verdict: verdictOf(found),
    frontRiderSag: readings.frontRiderSag ?? null,
    rearRiderSag: readings.rearRiderSag ?? null,
    trail: readings.trail ?? null,
    ways: found.meets && !found.alreadyThere ? found.ways.length : 0,
    forkPreloadChange: change.forkPreloadChange ?? null,
    tubeRaise: change.tubeRaise ?? null,
    forkRate: change.forkRate ?? null,
    oilHeightChange: change.oilHeightChange ?? null,
    rearPreloadChange: change.rearPreloadChange ?? null,
    rearRate: change.rearRate ?? null,
    shockLengthChange: change.shockLengthChange ?? null,
  }
}

export default defineWork<typeof statement, Picture>({
  solve(input) {
    const solved = search(input)
    return { outputs: compute(solved), picture: () => pictureOf(input, solved) }
  },
})
