import type { ComponentChildren, JSX } from 'preact'
import { useLayoutEffect, useRef, useState } from 'preact/hooks'

interface ConfirmProps {
  /** the button that asks */
  children: ComponentChildren
  question: string
  yes: string
  no: string
  act(): void
  class?: string
}

/** A button that asks once, in place; the safe answer has the focus. */
export function Confirm({ children, question, yes, no, act, ...rest }: ConfirmProps): JSX.Element {
  const [asking, setAsking] = useState(false)
  const safe = useRef<HTMLButtonElement>(null)
  useLayoutEffect(() => {
    if (asking) safe.current?.focus()
  }, [asking])
  if (!asking)
    return (
      <button type="button" class={rest.class} onClick={() => setAsking(true)}>
        {children}
      </button>
    )
  return (
    <div class="ask" role="group" aria-label={question}>
      <p>{question}</p>
      <button
        type="button"
        onClick={() => {
          setAsking(false)
          act()
        }}
      >
        {yes}
      </button>
      <button type="button" ref={safe} onClick={() => setAsking(false)}>
        {no}
      </button>
    </div>
  )
}
