import type { JSX } from 'preact'
import { countingIn, LETTERS, sumOf } from '../../src/room/votes.ts'
import type { Counts, Letter, Room } from '../../src/room/votes.ts'
import type { Asked } from './asked.ts'

interface BallotProps {
  asked: Asked
  room: Room
  count(letter: Letter, by: 1 | -1): void
}

interface TallyProps {
  name: string
  counts: Counts
  letter: Letter
}

/** Hands for one answer, as a number and a bar against all of that vote. */
function Tally({ name, counts, letter }: TallyProps): JSX.Element | null {
  const all = sumOf(counts)
  if (all === 0) return null
  const hands = counts[letter] ?? 0
  return (
    <span class="tally">
      <span>
        {name} {hands}
      </span>
      <meter min={0} max={all} value={hands} aria-label={`${name}: ${hands} of ${all}`} />
    </span>
  )
}

/** The question and its answers with the hands counted for each; which is right only once the result is shown. */
export function Ballot({ asked, room, count }: BallotProps): JSX.Element {
  const isShown = room.stage === 'shown'
  const counting = countingIn(room)
  return (
    <section class="ballot" aria-label="Question">
      {!isShown && asked.scene.map((text) => <p key={text}>{text}</p>)}
      <h1>{asked.ask}</h1>
      <ol role="list">
        {asked.options.map(({ text, right }, index) => {
          const letter = LETTERS[index]!
          return (
            <li key={text} class={isShown && right ? 'right' : undefined}>
              <button
                type="button"
                data-vote={letter}
                disabled={counting === null}
                onClick={(event) => count(letter, event.shiftKey ? -1 : 1)}
              >
                <b>{letter.toUpperCase()}</b>
                <span>
                  {text}
                  {isShown && right && <strong> Right.</strong>}
                </span>
              </button>
              <span class="tallies">
                {(room.stage === 'first' || isShown) && (
                  <Tally name={isShown ? '1st' : 'hands'} counts={room.first} letter={letter} />
                )}
                {(room.stage === 'second' || isShown) && (
                  <Tally name={isShown ? '2nd' : 'hands'} counts={room.second} letter={letter} />
                )}
              </span>
            </li>
          )
        })}
      </ol>
    </section>
  )
}
