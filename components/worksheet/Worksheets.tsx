import type { JSX } from 'preact'
import { useEffect, useState } from 'preact/hooks'
import type { BikeSheets } from '../../src/bikes/sheet.ts'
import { DEFAULTS, queryOf, readSettings } from '../../src/worksheet/settings.ts'
import type { Settings } from '../../src/worksheet/settings.ts'
import type { Sheet } from '../../src/worksheet/sheet.ts'
import { Key } from './Key.tsx'
import { Order } from './Order.tsx'
import type { TopicName } from './Order.tsx'
import { Questions } from './Questions.tsx'

interface WorksheetsProps {
  topics: readonly TopicName[]
  /** the sheet that the page opens with, made while building */
  sheet: Sheet
  bikes: BikeSheets
}

/** The address's settings, and what of it could not be used. */
const fromAddress = (topics: readonly TopicName[]) =>
  readSettings(
    new URLSearchParams(location.search),
    topics.map(({ id }) => id),
  )

/** The generator and the calculators that a sheet asks about come once a sheet is made here. */
async function generate(
  settings: Settings,
  { topics, bikes }: Pick<WorksheetsProps, 'topics' | 'bikes'>,
): Promise<Sheet> {
  const [{ loadTopics }, { makeSheet }] = await Promise.all([
    import('../../src/calculators/exercises.ts'),
    import('../../src/worksheet/sheet.ts'),
  ])
  const ids = settings.topics.length > 0 ? settings.topics : topics.map(({ id }) => id)
  return makeSheet(await loadTopics(ids), settings, bikes)
}

const same = (one: Settings, other: Settings): boolean => queryOf(one) === queryOf(other)

/** The order form, the class's sheet and its key. */
export default function Worksheets({ topics, sheet, bikes }: WorksheetsProps): JSX.Element {
  const [made, setMade] = useState({ settings: DEFAULTS, sheet })
  const [settings, setSettings] = useState(DEFAULTS)
  const [problems, setProblems] = useState<readonly string[]>([])
  const [keyShown, setKeyShown] = useState(false)

  useEffect(() => {
    const read = fromAddress(topics)
    setSettings(read.settings)
    setProblems(read.problems)
  }, [topics])
  useEffect(() => {
    if (same(settings, made.settings)) return undefined
    let wanted = true
    void generate(settings, { topics, bikes }).then((next) => {
      if (wanted) setMade({ settings, sheet: next })
    })
    return () => {
      wanted = false
    }
  }, [settings, made, topics, bikes])

  const order = (query: URLSearchParams): void => {
    const read = readSettings(
      query,
      topics.map(({ id }) => id),
    )
    setProblems(read.problems)
    if (read.problems.length > 0) return
    setSettings(read.settings)
    history.replaceState(history.state, '', queryOf(read.settings))
  }
  return (
    <div class="worksheets">
      <Order
        topics={topics}
        settings={settings}
        problems={problems}
        order={order}
        keyShown={keyShown}
        showKey={setKeyShown}
      />
      <Questions sheet={made.sheet} settings={made.settings} bikes={bikes} />
      <Key sheet={made.sheet} settings={made.settings} shown={keyShown} />
    </div>
  )
}
