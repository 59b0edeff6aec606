import * as z from 'zod/mini'
import { readBook } from './book.ts'
import { holdsAnything, migrated } from './migrate.ts'
import { fileSchema, FORMAT, VERSION } from './records.ts'
import type { RecordFile, Records } from './records.ts'

/* The file that a bench book is saved as. Whatever a file holds, reading it throws nothing, and nothing of a bad one is used. */

/** A thousand jobs with every reading of the site filled come to some forty million characters. */
const LARGEST = 80_000_000
/** A book's own lists and objects lie seven deep. */
const DEEPEST = 30

/** A name that objects use themselves, its signs as they are or as JSON may write them: a parser's record would drop it without a word. */
const OWN_WORKS = new RegExp(
  `"${[...'__proto__'].map((sign) => `(?:${sign}|\\\\u00${sign.charCodeAt(0).toString(16)})`).join('')}"\\s*:`,
  'i',
)

const CHOOSE = 'Choose a file that “Save as a file” wrote'

/** What a file says, or what is wrong with it and what to do. */
export type FileReading = { records: Records } | { problem: string }

/** How deep the brackets of a JSON text lie, strings left out; stops counting at `most`. */
export function depthOf(text: string, most = DEEPEST): number {
  let depth = 0
  let deepest = 0
  let inString = false
  for (let at = 0; at < text.length && deepest <= most; at++) {
    const sign = text.charCodeAt(at)
    if (inString) {
      if (sign === 0x5c) at++
      else if (sign === 0x22) inString = false
    } else if (sign === 0x22) inString = true
    else if (sign === 0x7b || sign === 0x5b) deepest = Math.max(deepest, ++depth)
    else if (sign === 0x7d || sign === 0x5d) depth--
  }
  return deepest
}

const placeOf = (path: readonly PropertyKey[]): string =>
  path.length === 0
    ? 'at its top'
    : `at “${path
        .map((step) => String(step).slice(0, 40))
        .slice(0, 8)
        .join(' › ')}”`

/** The first fault that a schema found, in words. */
export function faultOf(error: z.core.$ZodError): string {
  const [first] = error.issues
  const place = placeOf(first?.path ?? [])
  if (first?.code === 'unrecognized_keys')
    return `it has “${first.keys[0]?.slice(0, 40)}” ${place}, which a bench book has not`
  if (first?.code === 'invalid_key') return `it has a name ${place} that a bench book can’t have`
  if (first?.code === 'too_big' || first?.code === 'too_small')
    return `a number or a text ${place} is outside what a bench book takes`
  return `what it has ${place} is not what belongs there`
}

function parsed(text: string): { json: unknown } | { problem: string } {
  if (text.length > LARGEST)
    return { problem: `The file is larger than a bench book can be. ${CHOOSE}` }
  if (depthOf(text) > DEEPEST)
    return {
      problem: `The file is nested more than ${DEEPEST} levels deep, which no bench book is. ${CHOOSE}`,
    }
  if (OWN_WORKS.test(text))
    return { problem: `The file has a name, “__proto__”, that a bench book can’t have. ${CHOOSE}` }
  try {
    return { json: JSON.parse(text) }
  } catch {
    return { problem: `The file is not JSON. ${CHOOSE}` }
  }
}

const field = (json: unknown, name: string): unknown =>
  typeof json === 'object' && json !== null && Object.hasOwn(json, name)
    ? Reflect.get(json, name)
    : undefined

/** Bikes or jobs twice in one file, and jobs whose bike it has not. */
function looseEnds({ bikes, jobs }: RecordFile): string | null {
  const ids = new Set(bikes.map(({ id }) => id))
  if (ids.size < bikes.length || new Set(jobs.map(({ id }) => id)).size < jobs.length)
    return 'The file holds a record twice. Nothing of it was used: save it again where it came from'
  const stray = jobs.find(({ bike }) => !ids.has(bike))
  return stray
    ? `The file holds a job of ${stray.opened} whose bike it has not. Nothing of it was used: save it again where it came from`
    : null
}

/** A book of the first version, whose texts are those of its own reader. */
function readFirst(text: string, today: string): FileReading {
  const reading = readBook(text)
  if ('problem' in reading) return reading
  if (!holdsAnything(reading.book)) return { records: { bikes: [], jobs: [] } }
  const { bike, job } = migrated(reading.book, today)
  return { records: { bikes: [bike], jobs: [job] } }
}

/** Reads a saved bench book of any version. `today` [ISO date] is the day of readings that have none of their own. */
export function readFile(text: string, today: string): FileReading {
  const found = parsed(text)
  if ('problem' in found) return found
  const { json } = found
  if (field(json, 'format') !== FORMAT)
    return { problem: `The file is not a bench book of this site. ${CHOOSE}` }
  const version = field(json, 'version')
  if (version === 1) return readFirst(text, today)
  if (version !== VERSION)
    return {
      problem: `The file is a bench book of version ${String(version).slice(0, 12)}; this edition reads versions 1 and ${VERSION}. Open a newer edition of the site`,
    }
  const reading = z.safeParse(fileSchema, json)
  if (!reading.success)
    return {
      problem: `The file does not hold together: ${faultOf(reading.error)}. Nothing of it was used: save it again where it came from`,
    }
  const loose = looseEnds(reading.data)
  if (loose !== null) return { problem: loose }
  const { bikes, jobs } = reading.data
  return { records: { bikes, jobs } }
}

/** The text of a file that holds these records. `saved` is an ISO date. */
export function fileText(records: Records, edition: string, saved: string): string {
  const file: RecordFile = {
    format: FORMAT,
    version: VERSION,
    edition,
    saved,
    bikes: [...records.bikes],
    jobs: [...records.jobs],
  }
  return `${JSON.stringify(file, null, 1)}\n`
}
