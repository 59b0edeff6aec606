import type { JSX } from 'preact'
import { useEffect, useState } from 'preact/hooks'
import { LAST_SEED, MOST_QUESTIONS } from '../../src/worksheet/settings.ts'
import type { Settings } from '../../src/worksheet/settings.ts'

export interface TopicName {
  id: string
  title: string
}

interface OrderProps {
  topics: readonly TopicName[]
  settings: Settings
  problems: readonly string[]
  /** takes what the form holds, as an address's query */
  order(query: URLSearchParams): void
  keyShown: boolean
  showKey(shown: boolean): void
}

const LEVELS = {
  all: 'all levels',
  1: '1: in the head, or in a few lines',
  2: '2: with a pocket calculator',
  3: '3: judge it, or use this site',
} as const

const UNIT_NAMES = {
  metric: 'metric (N, N/mm)',
  kgf: 'metric, kilograms force (kgf/mm)',
  imperial: 'inches and pounds',
} as const

/** What the form holds: its topics joined, as the address has them. */
function queryIn(form: HTMLFormElement): URLSearchParams {
  const data = new FormData(form)
  const query = new URLSearchParams()
  const topics: string[] = []
  for (const [name, value] of data) {
    if (typeof value !== 'string') continue
    if (name === 'topics') topics.push(value)
    else query.set(name, value)
  }
  query.set('topics', topics.join(','))
  return query
}

interface NumberFieldProps {
  name: string
  label: string
  value: number
}

interface SelectProps {
  name: string
  label: string
  options: Readonly<Record<string, string>>
  value: string
}

const Select = ({ name, label, options, value }: SelectProps): JSX.Element => (
  <label>
    {label}
    <select name={name} value={value}>
      {Object.entries(options).map(([id, text]) => (
        <option key={id} value={id} selected={id === value}>
          {text}
        </option>
      ))}
    </select>
  </label>
)

/** Keeps what was typed, also where it can't be used, until another number is set. */
function NumberField({ name, label, value }: NumberFieldProps): JSX.Element {
  const [text, setText] = useState(String(value))
  useEffect(() => setText(String(value)), [value])
  return (
    <label>
      {label}
      <input
        name={name}
        inputMode="numeric"
        value={text}
        onInput={(event) => setText(event.currentTarget.value)}
      />
    </label>
  )
}

function Topics({ topics, settings }: Pick<OrderProps, 'topics' | 'settings'>): JSX.Element {
  return (
    <details class="order-topics">
      <summary>
        Topics: {settings.topics.length === 0 ? 'all' : settings.topics.length} of {topics.length}
      </summary>
      <fieldset>
        <legend>With none ticked, the sheet takes from all of them.</legend>
        {topics.map(({ id, title }) => (
          <label key={id}>
            <input
              type="checkbox"
              name="topics"
              value={id}
              checked={settings.topics.includes(id)}
            />
            {title}
          </label>
        ))}
      </fieldset>
    </details>
  )
}

/** The form that orders a sheet. It takes effect with every change; what can't be used is told and stays in its field. */
export function Order(props: OrderProps): JSX.Element {
  const { topics, settings, problems, order, keyShown, showKey } = props
  const another = (): void =>
    order(
      new URLSearchParams({
        ...settingsAsText(settings),
        seed: String((settings.seed % LAST_SEED) + 1),
      }),
    )
  return (
    <form
      class="order needs-script"
      onChange={(event) => order(queryIn(event.currentTarget))}
      onSubmit={(event) => {
        event.preventDefault()
        order(queryIn(event.currentTarget))
      }}
    >
      <div class="order-fields">
        <NumberField name="seed" label="Sheet number" value={settings.seed} />
        <NumberField name="n" label={`Questions, 1 to ${MOST_QUESTIONS}`} value={settings.n} />
        <Select name="level" label="Level" options={LEVELS} value={String(settings.level)} />
        <Select name="units" label="Units" options={UNIT_NAMES} value={settings.units} />
        <Select
          name="mark"
          label="Decimals"
          options={{ point: '38.5', comma: '38,5' }}
          value={settings.comma ? 'comma' : 'point'}
        />
      </div>
      <Topics topics={topics} settings={settings} />
      <div role="status" class="order-problems">
        {problems.map((problem) => (
          <p key={problem}>{problem}</p>
        ))}
      </div>
      <div class="order-acts">
        <button type="button" onClick={another}>
          Another sheet
        </button>
        <button type="button" aria-pressed={keyShown} onClick={() => showKey(!keyShown)}>
          {keyShown ? 'Hide the key' : 'Show the key'}
        </button>
        <button type="button" onClick={() => print()}>
          {keyShown ? 'Print the sheet and its key' : 'Print the sheet'}
        </button>
      </div>
    </form>
  )
}

const settingsAsText = ({ topics, level, n, units, comma }: Settings) => ({
  topics: topics.join(','),
  level: String(level),
  n: String(n),
  units,
  mark: comma ? 'comma' : 'point',
})
