import { listAll, listAny } from '../../units/words.ts'
import type statement from './statement.ts'
import type { Picture, ToldAim, ToldWay } from './picture.ts'
import {
  AIM_WORDS,
  ALLOW_WORDS,
  apartWords,
  besideWords,
  chanceWords,
  changeWords,
  dangerOf,
  isHeight,
  LEFT_OUT_WORDS,
  LEVELS,
  missWords,
  plusMinusWords,
  readingWords,
  UNMEASURED_WORDS,
  windowWords,
} from './names.ts'
import type { FigureProps } from '../../drawing/props.ts'
import { round } from '../../drawing/state.ts'
import { View } from '../../drawing/View.tsx'
import type { ViewName } from '../../drawing/View.tsx'

type Props = FigureProps<typeof statement, Picture>
type Say = Props['say']

const WIDTH = 200
const EDGE = 12

/** One aim: its window as a bar, hollow where the bike reads now, filled where it reads after, with a whisker for the ±. */
function Bar({ told, say }: { told: ToldAim; say: Say }) {
  const { now, after, plusMinus, open } = told
  // a window that is open on one side ends where the picture does
  const room = 0.4 * Math.max(Math.abs(after - now), plusMinus, 1e-6)
  const low = open.below ? Math.min(now, after - plusMinus, told.high) - room : told.low
  const high = open.above ? Math.max(now, after + plusMinus, told.low) + room : told.high
  const [from, to] = [Math.min(low, now, after - plusMinus), Math.max(high, now, after + plusMinus)]
  const at = (x: number): number =>
    round(EDGE + ((x - from) / Math.max(to - from, 1e-6)) * (WIDTH - 2 * EDGE))
  const label = `${AIM_WORDS[told.aim].name}: ${readingWords(told.aim, now, say)} now, ${readingWords(told.aim, after, say)} after`
  return (
    <svg class="way-bar" viewBox={`0 0 ${WIDTH} 24`} role="img" aria-label={label}>
      <line class="guide" x1={0} x2={WIDTH} y1={12} y2={12} />
      <rect class="way-window" x={at(low)} y={3} width={round(at(high) - at(low))} height={18} />
      <line
        class="way-within"
        x1={at(after - plusMinus)}
        x2={at(after + plusMinus)}
        y1={12}
        y2={12}
      />
      <circle class="way-now" cx={at(now)} cy={12} r={6} />
      <circle
        class={told.misses === 0 ? 'way-after' : 'way-after out'}
        cx={at(after)}
        cy={12}
        r={6.5}
      />
    </svg>
  )
}

/** An aim: now → after with its ±, and under it what is wanted, whether it gets there, and both as a bar. */
function AimRow({ told, say }: { told: ToldAim; say: Say }) {
  const { aim, now, after, misses } = told
  const missed = misses !== 0
  const chance = chanceWords(told)
  const [was, is] = [readingWords(aim, now, say), readingWords(aim, after, say)]
  return (
    <li
      data-aim={aim}
      data-si={String(after)}
      data-si-low={String(told.low)}
      data-si-high={String(told.high)}
    >
      <span class="way-name">{AIM_WORDS[aim].name}</span>
      <span class="way-reading">
        {!isHeight(aim) && was !== is && (
          <span class="way-was">
            {say.number(now, AIM_WORDS[aim].unit, AIM_WORDS[aim].digits)} →{' '}
          </span>
        )}
        <b class={missed ? 'way-missed' : undefined}>{is}</b>{' '}
        <small>{plusMinusWords(told, say)}</small>
      </span>
      <Bar told={told} say={say} />
      <small class="way-note">
        {missed && <b>{missWords(told, say)}, </b>}wanted {windowWords(told, say)}
        {chance !== null && <span class="way-chance">, {chance}</span>}
      </small>
    </li>
  )
}

/** A rise or fall of the frame from which on a stand leans and a lamp points otherwise than a rider is used to [m]: common practice, no source. */
const TELLING = 3e-3

/** What the way does to what was not asked for. */
function Besides({ way, say }: { way: ToldWay; say: Say }) {
  const moved = way.besides.flatMap((told) => besideWords(told, say) ?? [])
  if (moved.length === 0) return null
  const tilts = [...way.besides, ...way.aims].some(
    ({ aim, now, after }) =>
      (aim === 'frontHeight' || aim === 'rearHeight') && Math.abs(after - now) >= TELLING,
  )
  return (
    <p class="way-besides">
      <b>Also moves:</b> {moved.join(', ')}.
      {tilts && (
        <small class="way-danger">
          The bike leans on its side stand and its headlamp aims otherwise now: check both.
        </small>
      )}
    </p>
  )
}

function WayCard({ way, place, input, say, meets }: WayProps) {
  const head = meets ? (way.changes.length === 0 ? 'As it is' : `Way ${place}`) : 'The nearest'
  return (
    <li data-way={place} data-nearest={meets ? undefined : true}>
      <p class="way-head">
        <b>{head}</b> <span>{LEVELS[way.level]}</span>
      </p>
      <ul class="way-changes">
        {way.changes.map((change) => {
          const { what, howMuch, where } = changeWords(change, input, say)
          const danger = dangerOf(change, input, say)
          return (
            <li key={change.mean} data-change={change.mean} data-si={String(change.value)}>
              {what} <b>{howMuch}</b>
              {where !== undefined && <span class="way-where">, {where}</span>}
              {danger !== undefined && <small class="way-danger">{danger}</small>}
            </li>
          )
        })}
      </ul>
      <ul class="way-aims">
        {way.aims.map((told) => (
          <AimRow key={told.aim} told={told} say={say} />
        ))}
      </ul>
      <Besides way={way} say={say} />
    </li>
  )
}

interface WayProps {
  way: ToldWay
  place: number
  input: Props['now']['input']
  say: Say
  meets: boolean
}

/** Which aim fails by how much, and what would have to be allowed. */
function NoWay({ picture, say }: { picture: Picture; say: Say }) {
  const [nearest] = picture.ways
  const missed = nearest?.aims.filter(({ misses }) => misses !== 0) ?? []
  const fails = missed.map((told) => `${AIM_WORDS[told.aim].inWords} ${missWords(told, say)}`)
  const help = picture.wouldHelp?.map((mean) => ALLOW_WORDS[mean]) ?? []
  return (
    <p class="ways-none" data-none>
      <b>No way meets every aim.</b>
      {fails.length > 0 && ` The nearest leaves ${listAll(fails)}.`}
      {help.length > 0 && ` Allow ${listAny(help)}, and one does.`}
      {picture.done &&
        help.length === 0 &&
        ' No single thing more would do it: widen the window that matters least.'}
    </p>
  )
}

/** What the ways rest on: gaps that nobody measured, and sags to which the bike was fitted. */
function Rests({ picture, say }: { picture: Picture; say: Say }) {
  const { unmeasured, fitted, apart } = picture
  return (
    <>
      {unmeasured.length > 0 &&
        `No way ${listAny(unmeasured.map((gap) => UNMEASURED_WORDS[gap]))}. `}
      {fitted && 'The bike is fitted to the sags that were measured. '}
      {apart.length > 0 &&
        `Something is off: ${apart.map((sag) => apartWords(sag, say)).join('; ')}. Measure again before you trust a way. `}
    </>
  )
}

/** How many changes were tried, and how many of them are never offered. */
function LeftOut({ picture: { tried, leftOut } }: { picture: Picture }) {
  const reasons = (['toppedOut', 'bottomed', 'binds'] as const).filter((why) => leftOut[why] > 0)
  if (tried === 0) return null
  return (
    <>
      {tried} changes tried.{' '}
      {reasons.length > 0 &&
        `Left out: ${reasons.map((why) => `${leftOut[why]} that would ${LEFT_OUT_WORDS[why]}`).join(', ')}.`}
    </>
  )
}

/** So many ways are printed: the card has one sheet, and ways.css leaves out the rest. */
const ON_PAPER = 2

/** The ways, the least work first: what to do in bold, and each aim with its window, now and after. */
export default function FindChangeFigure({ now, say }: Props) {
  const { picture, input } = now
  const { ways, meets } = picture
  return (
    <View id="all">
      <figure class="fig ways">
        {!meets && <NoWay picture={picture} say={say} />}
        {/* beside the rows on a wide screen the list scrolls, and the keys need a place in it */}
        <ol tabIndex={0} aria-label="Ways found">
          {ways.map((way, place) => (
            <WayCard
              key={place}
              way={way}
              place={place + 1}
              input={input}
              say={say}
              meets={meets}
            />
          ))}
        </ol>
        <figcaption>
          The least work comes first. Each row: now → after, with its ±. Shaded: wanted. Hollow: the
          bike now. Filled: after. <Rests picture={picture} say={say} />
          <LeftOut picture={picture} />
          {ways.length > ON_PAPER && (
            <span class="ways-paper">
              {' '}
              On paper: the first {ON_PAPER} of {ways.length}.
            </span>
          )}
        </figcaption>
      </figure>
    </View>
  )
}

/** What the stage can turn to, and which inputs each view shows best. */
FindChangeFigure.views = [{ id: 'all', name: 'Ways' }] satisfies readonly ViewName[]
