import type { ComponentType } from 'preact'
import type { Say } from '../../src/calculators/say.ts'

/** What a still picture receives besides its own values. */
export interface StillProps {
  say: Say
  prefix: string
}

/** Pictures of chapters and procedures that belong to no calculator, by name. */
const stills: Record<string, () => Promise<{ default: unknown }>> = {
}

export const stillNames = Object.keys(stills)

/** Loads a still picture; null when there is none of that name. */
export async function loadStill(name: string): Promise<ComponentType<StillProps & Record<string, unknown>> | null> {
  const loader = stills[name]
  return loader === undefined ? null : ((await loader()).default as ComponentType<StillProps & Record<string, unknown>>)
}
