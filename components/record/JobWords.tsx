import type { JSX } from 'preact'
import { useState } from 'preact/hooks'
import type { JobRecord } from '../../src/record/records.ts'
import type { PartProps } from './props.ts'

type Name = 'odometer' | 'customer' | 'complaint' | 'initials' | 'notes'
const FIELDS: readonly { name: Name; label: string; most: number; long?: true }[] = [
  { name: 'customer', label: 'Customer', most: 200 },
  { name: 'odometer', label: 'Odometer', most: 40 },
  { name: 'initials', label: 'Done by, checked by: initials', most: 200 },
  { name: 'complaint', label: 'Complaint, in the rider’s words', most: 4000, long: true },
  { name: 'notes', label: 'Notes', most: 4000, long: true },
]

interface Props extends Pick<PartProps, 'whole'> {
  job: JobRecord
  write(what: string, change: (job: JobRecord) => JobRecord): Promise<void>
}

function Field({
  name,
  label,
  most,
  long,
  job,
  write,
}: (typeof FIELDS)[number] & Omit<Props, 'whole'>): JSX.Element {
  const [typed, setTyped] = useState<string | null>(null)
  const shared = {
    name,
    maxLength: most,
    autocomplete: 'off',
    value: typed ?? job[name],
    onInput: (event: JSX.TargetedEvent<HTMLInputElement | HTMLTextAreaElement>) =>
      setTyped(event.currentTarget.value),
    // kept once it is left, so that a letter is not a change of its own
    onChange: (event: JSX.TargetedEvent<HTMLInputElement | HTMLTextAreaElement>) => {
      const { value } = event.currentTarget
      void write(`${label.toLowerCase()} written`, (now) => ({ ...now, [name]: value })).then(() =>
        setTyped(null),
      )
    },
  }
  return (
    <label class={long ? 'across' : undefined}>
      {label}
      {long ? <textarea rows={2} {...shared} /> : <input type="text" {...shared} />}
    </label>
  )
}

/** What a job says in words. The customer's name is asked for only where the shop has switched it on, or one was written. */
export function JobWords({ whole, job, write }: Props): JSX.Element {
  const shown = FIELDS.filter(
    ({ name }) => name !== 'customer' || whole.settings.names || job.customer !== '',
  )
  return (
    <div class="job-words">
      {shown.map((field) => (
        <Field key={field.name} {...field} job={job} write={write} />
      ))}
    </div>
  )
}
