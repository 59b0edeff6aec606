import type { JSX } from 'preact'
import { useState } from 'preact/hooks'
import { FIGURE_GROUPS } from '../../src/bikes/figures.ts'
import type { FigureDefinition } from '../../src/bikes/figure.ts'
import { sheetFigure } from '../../src/bikes/ownBike.ts'
import { offersFor } from '../../src/record/offers.ts'
import type { Offer } from '../../src/record/offers.ts'
import type { Figure } from '../../src/record/records.ts'
import { isWorkedOut, withWorkedOut } from '../../src/record/workedOut.ts'
import type { WorkedFigure } from '../../src/record/workedOut.ts'
import { toSI } from '../../src/units/units.ts'
import { dayText, procedureTitle, standInName } from './data.ts'
import { FigureForm } from './FigureForm.tsx'
import { figureText } from './figureText.ts'
import { keepFigure } from './keepFigure.ts'
import type { BikeProps } from './props.ts'
import { SourceSign } from './SourceSign.tsx'

interface RowProps extends BikeProps {
  definition: FigureDefinition
  figure: Figure | WorkedFigure | undefined
  offer: Offer | undefined
}

function Origin({
  figure,
  props,
}: {
  figure: Figure | WorkedFigure
  props: RowProps
}): JSX.Element {
  const { definition, bike } = props
  const worked = isWorkedOut(figure)
  return (
    <p class="origin-line">
      <SourceSign from={figure.from} />
      {worked ? 'worked out, ' : ''}
      {figure.from} {dayText(figure.date)}
      {figure.of !== undefined && !worked && bike.figures[definition.id]
        ? ', kept from a result or reading'
        : ''}
    </p>
  )
}

/** One paragraph: what stands in, and what knowing it would give. */
function Unknown({ definition, bike, data, say }: RowProps): JSX.Element {
  const spec = data.bikes[bike.like]
  const instead = spec && sheetFigure(spec, definition.id)
  return (
    <p class="origin-line">
      {instead == null
        ? 'No stand-in. '
        : `${figureText(definition, { value: instead }, say)} from the ${standInName(data, bike.like)} instead. `}
      Gives {definition.gives}.{' '}
      {definition.procedure && (
        <a href={`${data.base}procedures/${definition.procedure}/`}>
          {procedureTitle(data, definition.procedure)}
        </a>
      )}
    </p>
  )
}

function Row(props: RowProps): JSX.Element {
  const { definition, figure, offer, say } = props
  const [writing, setWriting] = useState(false)
  const si = figure === undefined ? {} : { 'data-si': String(toSI(figure.value, definition.unit)) }
  return (
    <li data-bike-figure={definition.id} {...si} class={figure ? undefined : 'unknown-figure'}>
      <div class="figure-line">
        <b>{definition.label}</b>
        <span class="figure-value">
          {figure ? figureText(definition, figure, say) : <span class="unknown-mark">unknown</span>}
        </span>
        <button
          type="button"
          class="plain needs-script"
          data-do="write"
          aria-expanded={writing}
          onClick={() => setWriting(!writing)}
        >
          {figure ? 'Change' : 'Write'}
          <span class="hidden">: {definition.label}</span>
        </button>
      </div>
      {figure ? <Origin figure={figure} props={props} /> : <Unknown {...props} />}
      {offer && (
        <button
          type="button"
          class="plain needs-script"
          data-do="keep"
          onClick={() => void keepFigure(props, definition, offer.figure)}
        >
          Keep {figureText(definition, offer.figure, say)}, read on {dayText(offer.figure.date)}
          {figure && !isWorkedOut(figure)
            ? `, in place of ${figureText(definition, figure, say)}`
            : ''}
        </button>
      )}
      {writing && <FigureForm {...props} done={() => setWriting(false)} />}
    </li>
  )
}

/** A bike's figures in groups; first what is unknown, and what it would give. */
export function Figures(props: BikeProps): JSX.Element {
  const { bike, whole, data } = props
  const known = withWorkedOut(bike.figures)
  const offers = new Map(
    offersFor(bike, whole.jobs, data.taken).map((offer) => [offer.definition.id, offer]),
  )
  const asked = FIGURE_GROUPS.map((group) => ({
    ...group,
    figures: group.figures.filter(({ workedOut }) => !workedOut),
  }))
  const all = asked.flatMap(({ figures }) => figures)
  const count = all.filter(({ id }) => Object.hasOwn(known, id)).length
  const guessed = all.filter(({ id }) => known[id]?.from === 'guessed').length
  const isMissing = ({ id }: FigureDefinition): boolean =>
    !Object.hasOwn(known, id) && !offers.has(id)
  const row = (definition: FigureDefinition): JSX.Element => (
    <Row
      key={definition.id}
      {...props}
      definition={definition}
      figure={known[definition.id]}
      offer={offers.get(definition.id)}
    />
  )
  return (
    <section class="card figures-card" aria-labelledby="figures">
      <h2 id="figures">
        Figures{' '}
        <small>
          {count} known{guessed > 0 ? `, ${guessed} of them guessed` : ''}, {all.length - count}{' '}
          unknown
        </small>
      </h2>
      {asked.map(({ id, title, use, figures }) => (
        <div key={id} class="figure-group">
          <h3>
            {title} <small>{use}</small>
          </h3>
          <ul role="list">
            {figures
              .filter(({ id: each }) => Object.hasOwn(known, each) || offers.has(each))
              .map(row)}
          </ul>
          <Missing title={title} count={figures.filter(isMissing).length}>
            <ul role="list">{figures.filter(isMissing).map(row)}</ul>
          </Missing>
        </div>
      ))}
    </section>
  )
}

function Missing({
  title,
  count,
  children,
}: {
  title: string
  count: number
  children: JSX.Element
}): JSX.Element | null {
  if (count === 0) return null
  return (
    <details class="missing" open>
      <summary>
        {count} unknown<span class="hidden"> of {title.toLowerCase()}</span>, and what each would
        give
      </summary>
      {children}
    </details>
  )
}
