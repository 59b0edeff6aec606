import { createContext } from 'preact'
import type { ComponentChildren, ComponentType, JSX } from 'preact'
import { useContext } from 'preact/hooks'
import type { Handle } from './handles.ts'

/** One of the pictures that a figure is made of, as the stage names it. */
export interface ViewName {
  id: string
  /** on its tab: one short word */
  name: string
  /** the inputs whose change it shows best; the stage turns to it when one of them is taken in hand */
  shows?: readonly string[]
}

/** A figure's component carries the names of its views, so that a stage can offer them before it has drawn one, and its handles. */
export type Staged<P> = ComponentType<P> & {
  views?: readonly ViewName[]
  handles?: readonly Handle<P>[]
}

/** The view in front; null where all stand below each other. */
export const FrontView = createContext<string | null>(null)

interface ViewProps {
  id: string
  /** shows larger, for a hand, what another picture shows too: paper goes without it */
  closeUp?: boolean
  children: ComponentChildren
}

/** One picture of a figure. Where there is room for one only, the stage shows the one in front. */
export function View({ id, closeUp = false, children }: ViewProps): JSX.Element {
  const front = useContext(FrontView)
  const place = front === null || front === id ? 'view front' : 'view'
  return (
    <div class={closeUp ? `${place} close-up` : place} data-view={id}>
      {children}
    </div>
  )
}
