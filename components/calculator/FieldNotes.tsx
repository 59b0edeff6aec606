import type { JSX } from 'preact'
import type { Offer } from '../../src/machine/asWritten.ts'
import type { Origin } from './stand.ts'

interface Notes {
  /** id of the field, from which the ids of its notes are made */
  field: string
  hint?: string | undefined
  error?: string | undefined
  /** how a unit that was typed was read */
  note?: string | undefined
  /** whose value it is, where it is not the reader's */
  origin?: Origin | undefined
}

/** Ids of what a screen reader says of a field besides its name. */
export function describedBy({ field, hint, error, note, origin }: Notes): string | undefined {
  const ids = [
    origin && `${field}-origin`,
    hint && `${field}-hint`,
    error && `${field}-error`,
    note && `${field}-note`,
  ].filter(Boolean)
  return ids.length > 0 ? ids.join(' ') : undefined
}

/** The hint, the error and how a unit was read, beneath a field. */
export function FieldNotes({ field, hint, error, note }: Omit<Notes, 'origin'>): JSX.Element {
  return (
    <>
      {hint && (
        <p class="hint" id={`${field}-hint`}>
          {hint}
        </p>
      )}
      {error && (
        <p class="error" id={`${field}-error`}>
          {error}
        </p>
      )}
      {note && (
        <p class="hint" id={`${field}-note`} role="status">
          {note}
        </p>
      )}
    </>
  )
}

const originText = (origin: Origin): string =>
  origin === 'example'
    ? 'example'
    : origin === 'link'
      ? 'from the link'
      : origin.slice('bike:'.length)

/** A quiet mark in a field's label while its value is not the reader's own. It is no part of the name: the field is described by it. */
export function OriginMark({ field, origin }: Pick<Notes, 'field' | 'origin'>): JSX.Element | null {
  if (origin === undefined) return null
  return (
    <span class="origin" id={`${field}-origin`} aria-hidden="true">
      {originText(origin)}
    </span>
  )
}

/** What else a number may mean, each with a button that takes it. */
export function Offers({
  offers,
  take,
}: {
  offers: readonly Offer[]
  take(value: number): void
}): JSX.Element {
  return (
    <div class="offers" role="status">
      {offers.map(({ ask, use, value }) => (
        <p key={use}>
          {ask}{' '}
          <button type="button" class="plain" onClick={() => take(value)}>
            {use}
          </button>
        </p>
      ))}
    </div>
  )
}
