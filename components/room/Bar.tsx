import type { JSX } from 'preact'
import type { Room, Stage } from '../../src/room/votes.ts'

const SAYS: Record<Stage, string> = {
  first: 'First vote',
  talk: 'Tell your neighbour why',
  second: 'Second vote',
  shown: 'Result',
}

interface BarProps {
  room: Room
  move(by: 1 | -1): void
  reveal(): void
  another(): void
  startAnew(): void
  letters: boolean
  setLetters(on: boolean): void
}

/** Where the room stands, and what the trainer can do. */
export function Bar(props: BarProps): JSX.Element {
  const { room, move, reveal, another, startAnew, letters, setLetters } = props
  const isShown = room.stage === 'shown'
  return (
    <footer class="room-bar">
      <p role="status">{SAYS[room.stage]}</p>
      <button type="button" onClick={() => move(-1)} disabled={room.stage === 'first'}>
        Back
      </button>
      <button type="button" onClick={() => move(1)} disabled={isShown}>
        Next
      </button>
      <button type="button" data-reveal aria-pressed={isShown} onClick={reveal}>
        {isShown ? 'Hide the result' : 'Show the result'}
      </button>
      <details>
        <summary>More</summary>
        <div>
          <button type="button" onClick={another}>
            Another question
          </button>
          <button type="button" onClick={startAnew}>
            New class
          </button>
          <button type="button" aria-pressed={letters} onClick={() => setLetters(!letters)}>
            {letters ? 'Keys A to D count' : 'Keys A to D are off'}
          </button>
          <a href={location.pathname}>Leave the room view</a>
          <p>
            A to D count a hand, with shift they take one off. Page down goes on, page up back, a
            full stop darkens the screen, Escape hides the result.
          </p>
        </div>
      </details>
    </footer>
  )
}
