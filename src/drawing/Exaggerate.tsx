interface ExaggerateProps {
  on: boolean
  set(on: boolean): void
  id: string
}

/** How much larger a change is drawn when the reader asks for it. */
export const EXAGGERATION = 5

/** The switch that draws the change five times its size, and says so. */
export function Exaggerate({ on, set, id }: ExaggerateProps) {
  return (
    <label class="exaggerate" for={id} title={`Draw the change ×${EXAGGERATION}`}>
      <input
        type="checkbox"
        id={id}
        checked={on}
        onChange={(event) => set(event.currentTarget.checked)}
      />
      <span>
        <span class="whole">Change </span>×{EXAGGERATION}
      </span>
    </label>
  )
}
