import type { ComponentType, JSX } from 'preact'
import { useLayoutEffect, useMemo, useState } from 'preact/hooks'
import type { Topic } from '../../src/calculators/exercises.ts'
import type { LooseFigureProps } from '../../src/drawing/props.ts'
import type { Calculator } from '../../src/machine/calculator.ts'
import { actOfKey, counted, EMPTY, LETTERS, moved } from '../../src/room/votes.ts'
import type { KeyAct, Room } from '../../src/room/votes.ts'
import type { UnitChoice } from '../../src/units/choice.ts'
import { drawQuestion } from './asked.ts'
import type { Asked, Shown } from './asked.ts'
import { Ballot } from './Ballot.tsx'
import { Bar } from './Bar.tsx'
import { Result } from './Result.tsx'
import { loadRoom, newClass, saveRoom } from './store.ts'

interface ClassroomProps {
  topic: Topic
  calculator: Calculator
  Figure: ComponentType<LooseFigureProps>
  prediction: Asked | null
  shown: Shown
  choice: UnitChoice
}

/** The question of a number: 0 is a chapter’s prediction, and others are drawn from the calculator’s own. */
function questionOf(props: ClassroomProps, number: number): { asked: Asked; shown: Shown } | null {
  const { topic, prediction, shown, choice } = props
  if (number === 0 && prediction) return { asked: prediction, shown }
  return drawQuestion(topic, shown, { seed: number, choice })
}

const inField = (event: Event): boolean =>
  event.target instanceof Element &&
  event.target.matches('input:not([type="range"]), select, textarea')

/** The room after an act other than darkening it; a letter without an answer counts nothing. */
function acted(room: Room, what: Exclude<KeyAct, 'blank'>, answers: number): Room {
  if (typeof what === 'object')
    return LETTERS.indexOf(what.count) < answers ? counted(room, what.count, what.by) : room
  if (what === 'close') return room.stage === 'shown' ? { ...room, stage: 'second' } : room
  return moved(room, what === 'next' ? 1 : -1)
}

/** Keys count hands and lead through the stages, a clicker’s too. */
function useKeys(act: (what: KeyAct) => void, letters: boolean): void {
  // with the drawing, not after it: a key pressed as soon as the screen is dark must find it dark
  useLayoutEffect(() => {
    const press = (event: KeyboardEvent): void => {
      const what = inField(event) ? null : actOfKey(event, letters)
      if (what === null) return
      event.preventDefault()
      act(what)
    }
    addEventListener('keydown', press)
    return () => removeEventListener('keydown', press)
  })
}

/** Where the room stands with the question of this number, kept over a reload. */
function useRoom(number: number): [string, Room, (change: (room: Room) => Room) => void] {
  const key = `${location.pathname}#${number}`
  const [at, setAt] = useState({ key, room: loadRoom(key) })
  const roomOf = (was: typeof at): Room => (was.key === key ? was.room : loadRoom(key))
  // two keys may come before the next drawing: each starts from what the other left
  const change = (next: (room: Room) => Room): void =>
    setAt((was) => {
      const room = next(roomOf(was))
      saveRoom(key, room)
      return { key, room }
    })
  return [key, roomOf(at), change]
}

/** A vote in a room: question, hands, a talk, hands again, then the drawing with its one slider. */
export function Classroom(props: ClassroomProps): JSX.Element {
  const { topic, calculator, Figure, prediction, choice } = props
  const [number, setNumber] = useState(prediction ? 0 : 1)
  const [key, room, setRoom] = useRoom(number)
  const [dark, setDark] = useState(false)
  const [letters, setLetters] = useState(true)
  // eslint-disable-next-line react-hooks/exhaustive-deps -- the page gives its properties once
  const question = useMemo(() => questionOf(props, number), [number])
  const isShown = room.stage === 'shown'
  const act = (what: KeyAct): void => {
    if (what === 'blank') setDark(!dark)
    else if (dark && typeof what === 'string') setDark(false)
    else setRoom((was) => acted(was, what, question?.asked.options.length ?? 0))
  }
  useKeys(act, letters)
  if (question === null) return <main data-room>There is no question here in these units.</main>
  if (dark)
    return (
      <main data-room class="room dark">
        <p class="hidden">The screen is dark. A full stop or Escape brings it back.</p>
      </main>
    )
  return (
    <main data-room data-stage={room.stage} class="room">
      <div class={isShown ? 'room-body shown' : 'room-body'}>
        <Ballot
          asked={question.asked}
          room={room}
          count={(letter, by) => act({ count: letter, by })}
        />
        {isShown && (
          <Result
            key={key}
            calculator={calculator}
            exercises={topic.exercises}
            Figure={Figure}
            shown={question.shown}
            choice={choice}
          />
        )}
      </div>
      <Bar
        room={room}
        move={(by) => act(by === 1 ? 'next' : 'back')}
        reveal={() => setRoom((was) => ({ ...was, stage: isShown ? 'second' : 'shown' }))}
        another={() => setNumber(number + 1)}
        letters={letters}
        setLetters={setLetters}
        startAnew={() => {
          newClass()
          setRoom(() => EMPTY)
        }}
      />
    </main>
  )
}
