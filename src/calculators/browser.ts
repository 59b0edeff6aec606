import type { Calculator, Work } from './define.ts'

/* How a browser gets a calculator: its statement stands in the page, its work and its remarks are modules of their own, each loaded when it is needed. */

type Remarks = NonNullable<Calculator['remarks']>

const works = import.meta.glob<Work>('./*.work.ts')
const remarks = import.meta.glob<{ remarks: Remarks }>('./*.remarks.ts')

/** The ids of all calculators. */
export const workIds = Object.keys(works).map((file) => file.slice(2, -'.work.ts'.length))

function loaderOf<T>(loaders: Record<string, () => Promise<T>>, id: string, kind: string): () => Promise<T> {
  const load = loaders[`./${id}.${kind}.ts`]
  if (load === undefined) throw new RangeError(`there is no calculator “${id}”`)
  return load
}

/** What one calculator does; refuses an unknown id. */
export const loadWork = async (id: string): Promise<Work> => loaderOf(works, id, 'work')()

/** The function that reads one calculator's numbers; refuses an unknown id. */
export const loadRemarks = async (id: string): Promise<Remarks> => (await loaderOf(remarks, id, 'remarks')()).remarks
