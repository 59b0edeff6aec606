import type { ComponentType } from 'preact'
import type { LooseFigureProps } from '../drawing/props.ts'
import type { Remarks } from '../machine/remark.ts'
import type { Work } from '../machine/work.ts'

/* How a browser gets a calculator: its statement stands in the page; its work, its figure and its remarks are modules of their own, each loaded when it is needed. */

type Load<T> = () => Promise<{ default: T }>

// a calculator that is worked out beside the page has its work in a worker, and `away.ts` says how to reach it
const works = import.meta.env.SSR
  ? import.meta.glob<{ default: Work }>('./*/solve.ts')
  : {
      ...import.meta.glob<{ default: Work }>(['./*/solve.ts', '!./find-change/solve.ts']),
      ...import.meta.glob<{ default: Work }>('./*/away.ts'),
    }
const remarks = import.meta.glob<{ default: Remarks }>('./*/remarks.ts')
const figures = import.meta.glob<{ default: ComponentType<LooseFigureProps> }>('./*/Figure.tsx')

/** The ids of all calculators. */
export const workIds = Object.keys(works).map((file) => file.split('/')[1]!)

async function loaded<T>(loaders: Record<string, Load<T>>, id: string, file: string): Promise<T> {
  const load = loaders[`./${id}/${file}`]
  if (load === undefined) throw new RangeError(`there is no calculator “${id}”`)
  return (await load()).default
}

/** What one calculator does; refuses an unknown id. */
export const loadWork = (id: string): Promise<Work> =>
  loaded(works, id, `./${id}/away.ts` in works ? 'away.ts' : 'solve.ts')

/** The function that reads one calculator's numbers; refuses an unknown id. */
export const loadRemarks = (id: string): Promise<Remarks> => loaded(remarks, id, 'remarks.ts')

/** The figure of one calculator; refuses an unknown id. */
export const loadFigure = (id: string): Promise<ComponentType<LooseFigureProps>> =>
  loaded(figures, id, 'Figure.tsx')
