import { newBike, newJob } from '../../src/record/records.ts'

/* Files that are meant to do harm, or to get half of themselves in. Invented. */

const DAY = '2026-03-12'
const bike = newBike('b1', { name: 'Roadster', like: 'middleweight-roadster', made: DAY })
const part = {
  id: 'measure-front-sag',
  procedure: 'measure-front-sag',
  ticks: { 'read-it': { hash: 'h', at: DAY } },
  readings: { extended: { at: DAY, boxes: [{ typed: '150', unit: 'mm', value: 150 }] } },
}
const job = { ...newJob('j1', { bike: 'b1', kind: 'loose', opened: DAY }), parts: [part] }
const figure = { value: 200, from: 'measured', date: DAY }
const file = {
  format: 'witness-mark-bench-book',
  version: 2,
  edition: 'e',
  saved: DAY,
  bikes: [bike],
  jobs: [job],
}

type Fields = Record<string, unknown>
const top = (change: Fields): string => JSON.stringify({ ...file, ...change })
const inBike = (change: Fields): string => top({ bikes: [{ ...bike, ...change }] })
const inJob = (change: Fields): string => top({ jobs: [{ ...job, ...change }] })
const inPart = (change: Fields): string => inJob({ parts: [{ ...part, ...change }] })
const inFigure = (change: Fields): string => inBike({ figures: { mass: { ...figure, ...change } } })
/** The file with one piece of its text put in place of another, which JSON.stringify would not write. */
const typed = (text: string, from: string, to: string): string => {
  if (!text.includes(from)) throw new Error(`nothing to replace: ${from}`)
  return text.replace(from, to)
}
const nested = (depth: number): string => `${'['.repeat(depth)}${']'.repeat(depth)}`
const box = { typed: '1', unit: 'mm', value: 1 }

/** By what is wrong with it; each is refused. */
export const hostile: Readonly<Record<string, string>> = {
  'brackets a hundred thousand deep': nested(100_000),
  'brackets never closed': '[{"a":'.repeat(50_000),
  'a note that is a list, 40 deep': typed(inBike({ note: 'HERE' }), '"HERE"', nested(40)),
  'objects 5,000 deep for a figure': typed(
    inBike({ figures: { mass: 'HERE' } }),
    '"HERE"',
    `${'{"a":'.repeat(5000)}1${'}'.repeat(5000)}`,
  ),
  'larger than any book': 'x'.repeat(80_000_001),
  'a number past all size': inFigure({ value: 1e300 }),
  'a number that overflows': typed(inFigure({}), '200', '1e999'),
  'a negative one': typed(inFigure({}), '200', '-1e999'),
  'a number of a thousand digits': typed(inFigure({}), '200', '9'.repeat(1000)),
  'no number, by name': typed(inFigure({}), '200', 'NaN'),
  hexadecimal: typed(inFigure({}), '200', '0xff'),
  'a number in words': inFigure({ value: '200' }),
  'a ± below nothing': inFigure({ plusMinus: -1 }),
  'a count of changes past all counting': inBike({ rev: 1e10 }),
  'half a change': inJob({ rev: 1.5 }),
  'a reading past all size': typed(inPart({}), '"value":150', '"value":1e999'),
  'version 0': top({ version: 0 }),
  'version 99': top({ version: 99 }),
  'version −1': top({ version: -1 }),
  'nearly version 2': top({ version: 2.0000001 }),
  'version 2 in quotes': top({ version: '2' }),
  'a list for a version': top({ version: [2] }),
  'version true': top({ version: true }),
  'no version': top({ version: undefined }),
  'records in the first version': top({ version: 1 }),
  'a later version told first': typed(top({}), '"version":2', '"version":2,"version":99'),
  '__proto__ at the top': typed(top({}), '{"format"', '{"__proto__":{"hit":1},"format"'),
  '__proto__ among figures': typed(inBike({}), '"figures":{}', '"figures":{"__proto__":{}}'),
  '__proto__ among ticks': typed(inPart({}), '"read-it"', '"__proto__"'),
  '__proto__ among readings': typed(inPart({}), '"extended"', '"__proto__"'),
  '__proto__ among answers': typed(inJob({}), '"answers":{}', '"answers":{"__proto__":"a"}'),
  '__proto__ in disguise, at the top': typed(
    top({}),
    '{"format"',
    '{"\\u005f_proto__":{"hit":1},"format"',
  ),
  '__proto__ in disguise, among figures': typed(
    inBike({}),
    '"figures":{}',
    '"figures":{"__pro\\u0074o__":{"value":1,"from":"manual","date":"2026-03-12"}}',
  ),
  'a name with spaces for a figure': inBike({ figures: { 'the mass': figure } }),
  'markup for an id': inBike({ id: '<script>' }),
  'a path for an id': inJob({ id: '../../etc' }),
  'a script for a kind': inJob({ kind: 'javascript:alert(1)' }),
  'an image for a stand-in': inBike({ like: '<img src=x onerror=alert(1)>' }),
  'a day that is none': inBike({ made: '2026-13-01' }),
  'a time for a day': inJob({ opened: `${DAY}T10:00:00Z` }),
  'a day in another calendar': inJob({ closed: '12.03.2026' }),
  'a name of a million letters': inBike({ name: 'x'.repeat(1_000_000) }),
  'a note of a million letters': inJob({ notes: 'x'.repeat(1_000_000) }),
  'a thousand and one parts': inJob({ parts: Array.from({ length: 1001 }, () => part) }),
  'a hundred boxes': inPart({
    readings: { extended: { at: DAY, boxes: Array.from({ length: 100 }, () => box) } },
  }),
  'something more in a box': inPart({
    readings: { extended: { at: DAY, boxes: [{ ...box, run: 'alert(1)' }] } },
  }),
  'an object for the bikes': top({ bikes: { length: 1, 0: bike } }),
  'a text for the jobs': top({ jobs: 'none' }),
  'nothing for the jobs': top({ jobs: null }),
  'a bike twice': top({ bikes: [bike, bike] }),
  'a job twice': top({ jobs: [job, job] }),
  'a job without its bike': top({ bikes: [] }),
  'two files in one': `${top({})}${top({})}`,
  'a comma too many': typed(top({}), '"jobs":[', '"jobs":[,'),
  'a comment': `/* hello */${top({})}`,
  markup: `<!doctype html><script>alert(1)</script>`,
  'half a file': top({}).slice(0, -40),
  'another format': top({ format: 'witness-mark' }),
  'a list of books': `[${top({})}]`,
}

/** Markup that would do something, wherever a text is put into a page as markup. */
export const MARKUP =
  '"><img src=x onerror="window.hit=1"><script>window.hit=1</script>${window.hit=1}'

/** A book that has that markup in every text that a reader can write, and is whole. */
export const marked = {
  bikes: [
    {
      ...bike,
      name: MARKUP,
      note: MARKUP,
      job: 'j1',
      figures: { mass: { ...figure, of: MARKUP } },
    },
  ],
  jobs: [
    {
      ...job,
      odometer: MARKUP.slice(0, 40),
      customer: MARKUP,
      complaint: MARKUP,
      initials: MARKUP,
      notes: MARKUP,
      parts: [
        {
          ...part,
          readings: {
            extended: { at: DAY, boxes: [{ typed: MARKUP, unit: 'mm', value: null }] },
          },
          ticks: { 'read-it': { hash: MARKUP, at: MARKUP } },
        },
      ],
      decisions: [{ at: DAY, what: MARKUP, from: MARKUP, to: MARKUP, why: MARKUP, agreed: MARKUP }],
    },
  ],
} as const
