import { allOf, applies } from './applies.ts'
import type { Answers, When } from './applies.ts'
import type { DangerText, PartWritten } from './schema.ts'

/* A job as its data say it, made whole and joined with the procedures' own steps. Nothing here knows of files or pages. */

export interface JobText {
  asks: readonly string[]
  visits: readonly { id: string; title: string }[]
  parts: readonly PartText[]
  rules: readonly { only: string; when: When; steps: readonly string[] }[]
  blanks: Readonly<Record<string, readonly string[]>>
  initials: readonly string[]
}

/** A part made whole: its stretch's title, steps and gate are its own. */
export type PartText = Omit<PartWritten, 'use' | 'id' | 'title'> & { id: string; title: string }

/** What a job reads of a procedure. */
export interface ProcedureText<Step> {
  id: string
  minutes: readonly [number, number]
  people: number
  steps: readonly Step[]
}

export interface StepText {
  id: string
  do: string
  cautions: readonly string[]
}

export interface Danger {
  caution: string
  line: string
  when: When | undefined
}

export interface JobStep<Step> {
  /** "procedure/step" */
  key: string
  procedure: string
  step: Step
  number: number
  /** the part's own condition and the step's, both to hold */
  when: When | undefined
  /** the step's condition in words */
  only: string | undefined
  dangers: readonly Danger[]
  blanks: readonly string[]
  initials: boolean
  /** share of its procedure's time [minutes], least and most */
  minutes: readonly [number, number]
  people: number
}

export interface JobPart<Step> {
  text: PartText
  number: number
  steps: readonly JobStep<Step>[]
}

/** The lines of danger of a step: its own where it has one, else the caution's. */
export function dangersOf(
  key: string,
  cautions: readonly string[],
  lines: readonly DangerText[],
): Danger[] {
  return cautions.flatMap((caution) => {
    const text = lines.find(({ id }) => id === caution)
    if (!text)
      throw new Error(`${key}: the caution “${caution}” has no line in content/dangers.yaml`)
    const own = text.at.filter(({ step }) => step === key)
    return own.length > 0
      ? own.map(({ line, when }) => ({ caution, line, when }))
      : [{ caution, line: text.line, when: undefined }]
  })
}

/** The parts of a job with their steps, numbered as on the card. */
export function partsOf<Step extends StepText>(
  job: JobText,
  procedures: readonly ProcedureText<Step>[],
  lines: readonly DangerText[],
): JobPart<Step>[] {
  const ruleOf = (key: string) => job.rules.filter(({ steps }) => steps.includes(key))
  return job.parts.map((text, index) => {
    const found = text.take.flatMap(({ of, steps }) => steps.map((step) => ({ of, step })))
    const steps = found.map(({ of, step: id }, place): JobStep<Step> => {
      const procedure = procedures.find((each) => each.id === of)
      const step = procedure?.steps.find((each) => each.id === id)
      if (!procedure || !step) throw new Error(`${text.id}: there is no step “${of}/${id}”`)
      const key = `${of}/${id}`
      const rules = ruleOf(key)
      return {
        key,
        procedure: of,
        step,
        number: place + 1,
        when: rules.length > 0 ? allOf(rules.map(({ when }) => when)) : undefined,
        only: rules.length > 0 ? rules.map(({ only }) => only).join(', ') : undefined,
        dangers: dangersOf(key, step.cautions, lines),
        blanks: job.blanks[key] ?? [],
        initials: job.initials.includes(key),
        minutes: [
          procedure.minutes[0] / procedure.steps.length,
          procedure.minutes[1] / procedure.steps.length,
        ],
        people: text.people ?? procedure.people,
      }
    })
    return { text, number: index + 1, steps }
  })
}

/** The parts and steps that apply with these answers. */
export function laidOut<Step>(parts: readonly JobPart<Step>[], answers: Answers): JobPart<Step>[] {
  return parts
    .filter(({ text }) => applies(text.when, answers))
    .map((part) => ({ ...part, steps: part.steps.filter(({ when }) => applies(when, answers)) }))
}
