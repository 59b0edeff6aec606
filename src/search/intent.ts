import type { Kind } from './lexicon.ts'

/** A question's form leans towards a kind of page, by so much. */
const LEAN = 1.15

const FORMS: readonly { form: RegExp; kind: Kind }[] = [
  {
    form: /\bhow (to|do i|do you|can i|should i)\b|\b(procedure|steps|step by step|instructions)\b/,
    kind: 'procedure',
  },
  {
    form: /\bwhat('?s| is| are| does .+ mean)\b|\b(meaning|definition|define|glossary)\b/,
    kind: 'glossary',
  },
  { form: /\b(calculator|calculate|compute|work out)\b/, kind: 'calculator' },
  { form: /\b(danger|dangerous|hazard|risk|warning|caution|is it safe)\b/, kind: 'caution' },
  {
    form: /\b(chapter|explain|explained|explanation|theory|derivation|formula|equation)\b/,
    kind: 'chapter',
  },
  {
    form: /\b(lesson|class|classroom|course|briefing|session|teach|teaching|trainers?|students?|pupils?|apprentices?|handouts?|worksheets?|quiz|homework|projector)\b/,
    kind: 'lesson',
  },
]

const NUMBER =
  /\bhow (much|many|far|high|low|long|hard|heavy|stiff|big|often|tight|accurate|deep)\b|\b(what|which) (percentage|percent|figure|rate|weight|length|pressure|height)\b|\bconvert\b/

/** Whether a question asks for a number: “how much sag”. */
export const asksForNumber = (text: string): boolean => NUMBER.test(text.toLowerCase())

/** How much each kind counts for a question of this form: 1, or a little more. */
export function leaning(text: string): (kind: Kind) => number {
  const asked = new Set(
    FORMS.filter(({ form }) => form.test(text.toLowerCase())).map(({ kind }) => kind),
  )
  return (kind) => (asked.has(kind) ? LEAN : 1)
}
