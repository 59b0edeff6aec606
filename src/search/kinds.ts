import type { Kind } from './lexicon.ts'

/** The kinds of result with their names in the singular and the plural, in the order of the filter. */
export const kinds: readonly { kind: Kind; one: string; many: string }[] = [
  { kind: 'procedure', one: 'Procedure', many: 'Procedures' },
  { kind: 'job', one: 'Job card', many: 'Job cards' },
  { kind: 'caution', one: 'Caution', many: 'Cautions' },
  { kind: 'chapter', one: 'Chapter', many: 'Chapters' },
  { kind: 'calculator', one: 'Calculator', many: 'Calculators' },
  { kind: 'symptom', one: 'Symptom', many: 'Symptoms' },
  { kind: 'glossary', one: 'Glossary', many: 'Glossary' },
  { kind: 'lesson', one: 'Lesson', many: 'Lessons' },
]

export const nameOfKind = (kind: Kind): string =>
  kinds.find((each) => each.kind === kind)?.one ?? ''

/** Reads the kinds named in an address; unknown ones are left out. */
export const readKinds = (names: readonly string[]): Set<Kind> =>
  new Set(kinds.map(({ kind }) => kind).filter((kind) => names.includes(kind)))
