import type { JSX, RefObject } from 'preact'
import { useRef, useState } from 'preact/hooks'
import { readingsCsv } from '../../src/record/csv.ts'
import { planImport } from '../../src/record/importPlan.ts'
import type { ImportPlan } from '../../src/record/importPlan.ts'
import { fileText, readFile } from '../../src/record/recordFile.ts'
import type { PartProps } from './props.ts'
import { today } from './data.ts'
import { ImportPreview } from './ImportPreview.tsx'
import { saveText } from './saveText.ts'

const EXPORTED = 'witness-mark.exported'

function remember(day: string): void {
  try {
    localStorage.setItem(EXPORTED, day)
  } catch {
    // then the age of the last file is not shown
  }
}

function lastExport(): string | null {
  try {
    return localStorage.getItem(EXPORTED)
  } catch {
    return null
  }
}

const daysSince = (day: string): number =>
  Math.round((Date.parse(today()) - Date.parse(day)) / 86_400_000)

function ageText(): string {
  const day = lastExport()
  const days = day === null ? Number.NaN : daysSince(day)
  if (Number.isNaN(days)) return 'It was never saved as a file here.'
  return `Last saved as a file ${days === 0 ? 'today' : `${days} ${days === 1 ? 'day' : 'days'} ago`}.`
}

/** All readings as a table for other programs. */
function saveReadings({ data, whole }: Pick<PartProps, 'data' | 'whole'>): void {
  const unitOf = new Map(
    data.taken.map(({ procedure, spec }) => [`${procedure} ${spec.id}`, spec.unit]),
  )
  const text = readingsCsv(whole, (procedure, id) => unitOf.get(`${procedure} ${id}`) ?? '')
  saveText(`readings-${today()}.csv`, text, 'text/csv')
}

/** The file chooser, opened by a button elsewhere. */
function Chooser({
  input,
  chosen,
}: {
  input: RefObject<HTMLInputElement>
  chosen(file: File): void
}): JSX.Element {
  return (
    <input
      ref={input}
      type="file"
      class="hidden"
      data-file
      tabIndex={-1}
      aria-label="A saved bench book"
      accept=".json,application/json"
      onChange={(event) => {
        const [file] = event.currentTarget.files ?? []
        event.currentTarget.value = ''
        if (file) chosen(file)
      }}
    />
  )
}

const Problem = ({ text }: { text: string }): JSX.Element | null =>
  text === '' ? null : (
    <p class="error" role="alert" data-import-problem>
      {text}
    </p>
  )

/** Saves the book as a file, and reads one back with a look at it first. */
export function Files({
  data,
  state,
  whole,
}: Pick<PartProps, 'data' | 'state' | 'whole'>): JSX.Element {
  const input = useRef<HTMLInputElement>(null)
  const [plan, setPlan] = useState<{ plan: ImportPlan; name: string } | null>(null)
  const [problem, setProblem] = useState('')
  const [age, setAge] = useState(ageText)
  const saveAll = (): void => {
    saveText(
      `bench-book-${today()}.json`,
      fileText(whole, data.edition, today()),
      'application/json',
    )
    remember(today())
    setAge(ageText())
    state.tell(`Saved as a file: ${whole.bikes.length} bikes and ${whole.jobs.length} jobs.`)
  }
  const look = async (file: File): Promise<void> => {
    const reading = readFile(await file.text(), today())
    setProblem(
      'problem' in reading ? `${file.name}: ${reading.problem}. Your bench book is as it was.` : '',
    )
    setPlan(
      'problem' in reading ? null : { plan: planImport(whole, reading.records), name: file.name },
    )
  }
  return (
    <section class="files needs-script" aria-labelledby="files">
      <h2 id="files">Files</h2>
      <p>
        The book is kept in this browser only, on this device; nothing is sent anywhere. Clearing
        the browser’s data clears it, and some browsers clear it by themselves after weeks without a
        visit. {age}
      </p>
      <p class="act">
        <button type="button" data-do="export" onClick={saveAll}>
          Save as a file
        </button>
        <button type="button" data-do="import" onClick={() => input.current?.click()}>
          Read a file back
        </button>
        <button type="button" data-do="export-csv" onClick={() => saveReadings({ data, whole })}>
          Readings as a table (CSV)
        </button>
      </p>
      <Chooser input={input} chosen={(file) => void look(file)} />
      <Problem text={problem} />
      {plan && <ImportPreview {...plan} state={state} done={() => setPlan(null)} />}
      <p class="small">
        The file’s form is described in <a href={`${data.base}record/schema.json`}>a JSON schema</a>
        .
      </p>
    </section>
  )
}
