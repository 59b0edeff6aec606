import type { ComponentType, JSX } from 'preact'
import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks'
import { fitLettering } from '../../src/drawing/fitLettering.ts'
import type { LooseFigureProps } from '../../src/drawing/props.ts'
import { useFollowed } from '../../src/drawing/useFollowed.ts'
import { FrontView } from '../../src/drawing/View.tsx'
import type { Staged, ViewName } from '../../src/drawing/View.tsx'
import type { HandlesProps } from './Handles.tsx'
import { Strip } from './Strip.tsx'
import type { CalculatorState } from './useCalculator.ts'

/** The tab that shows captions and tables in place of the drawings. */
const WORDS = 'words'

export type StagedFigure = Staged<LooseFigureProps>

interface StageProps {
  state: CalculatorState
  Figure: ComponentType<LooseFigureProps> | null
  prefix: string
  /** the input that the reader has in hand */
  hand: string | null
  /** the sentence that reads the numbers */
  reading: string
}

const ALONE: readonly ViewName[] = [{ id: 'all', name: 'Drawing' }]

/** The view in front: the reader's choice, until a control is taken whose change another view shows. */
function useFront(views: readonly ViewName[], hand: string | null): [string, (id: string) => void] {
  const [front, setFront] = useState(views[0]!.id)
  useEffect(() => {
    if (hand === null) return
    const shows = ({ shows = [] }: ViewName): boolean => shows.includes(hand)
    const best = views.find(shows)
    if (best && !views.some((view) => view.id === front && shows(view))) setFront(best.id)
    // eslint-disable-next-line react-hooks/exhaustive-deps -- only a control that is taken changes the view, not the reader's choice of one
  }, [hand])
  return [front, setFront]
}

/** Keeps the lettering of the drawings at its size on screen. Sizes are measured when the box or the view changes, not in a frame in which a control moves. */
function useLettering(place: { current: HTMLElement | null }, front: string): void {
  useLayoutEffect(() => {
    const box = place.current
    if (box === null) return
    const fit = (): void => fitLettering(box)
    const observer = new ResizeObserver(fit)
    observer.observe(box)
    // a drawing that grows to hold a longer arrow is fitted anew
    const frames = new MutationObserver(fit)
    frames.observe(box, { subtree: true, attributeFilter: ['viewBox'] })
    return () => {
      observer.disconnect()
      frames.disconnect()
    }
  }, [place])
  useLayoutEffect(() => {
    if (place.current) fitLettering(place.current)
  }, [place, front])
}

/** Handles come once the card is alive, where the figure has any; should they not arrive, the rows do all that they do. */
function useHandles(wanted: boolean): ComponentType<HandlesProps> | null {
  const [loaded, setLoaded] = useState<ComponentType<HandlesProps> | null>(null)
  useEffect(() => {
    if (!wanted) return
    import('./Handles.tsx').then(
      ({ Handles }) => setLoaded(() => Handles),
      () => undefined,
    )
  }, [wanted])
  return loaded
}

/** The drawing and its first results, in sight while the hand moves: pinned above the controls on a phone, beside them on a wide screen. */
export function Stage({ state, Figure, prefix, hand, reading }: StageProps): JSX.Element {
  const place = useRef<HTMLDivElement>(null)
  const { now, before, unknown } = useFollowed(state.evaluation, place)
  const { views = ALONE, handles } = (Figure as StagedFigure | null) ?? {}
  const [front, setFront] = useFront(views, hand)
  useLettering(place, front)
  const Handles = useHandles(handles !== undefined)
  const props: LooseFigureProps | null = useMemo(
    () => now && { now, before: before ?? null, say: state.say, prefix: `${prefix}-fig` },
    // eslint-disable-next-line react-hooks/exhaustive-deps -- units and calculator change with the evaluation or with the card
    [now, before],
  )
  const drawn = useMemo(
    () =>
      props && Figure ? (
        <Figure {...props} />
      ) : (
        <p class="no-picture">No drawing while the values can’t be computed.</p>
      ),
    [props, Figure],
  )
  return (
    <section class="stage" data-stage aria-label="Drawing and first result">
      <Strip state={state} reading={reading} />
      <div
        class="draw"
        data-figure
        data-views={views.length}
        data-words={front === WORDS || undefined}
        ref={place}
      >
        <FrontView.Provider value={front}>{drawn}</FrontView.Provider>
        {handles && Handles && front !== WORDS && (
          <Handles
            handles={handles}
            drawn={props}
            state={state}
            box={place}
            front={front}
            hand={hand}
          />
        )}
        {now && unknown.length > 0 && (
          <p class="hint">Drawn with what you don’t know in the middle of its range.</p>
        )}
      </div>
      <Tabs views={views} front={front} show={setFront} />
    </section>
  )
}

function Tabs({
  views,
  front,
  show,
}: {
  views: readonly ViewName[]
  front: string
  show(id: string): void
}): JSX.Element {
  const tabs = [...views, { id: WORDS, name: 'In words' }]
  return (
    <div class="tabs needs-script" role="group" aria-label="What the stage shows">
      {tabs.map(({ id, name }) => (
        <button
          key={id}
          type="button"
          class={id === WORDS ? 'tab words' : 'tab'}
          aria-pressed={front === id}
          onClick={() => show(id)}
        >
          {name}
        </button>
      ))}
    </div>
  )
}
