import type { JSX } from 'preact'

/** Ids of what stands beneath a field, for screen readers. */
export function describedBy(field: string, hint: string | undefined, error: string | undefined): string | undefined {
  const ids = [hint && `${field}-hint`, error && `${field}-error`].filter(Boolean)
  return ids.length > 0 ? ids.join(' ') : undefined
}

/** The hint and the error beneath a field. */
export function FieldNotes({ field, hint, error }: { field: string; hint?: string | undefined; error?: string | undefined }): JSX.Element {
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
    </>
  )
}
