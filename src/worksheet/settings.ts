import type { Level } from '../machine/question.ts'
import { IMPERIAL, METRIC } from '../units/choice.ts'
import type { UnitChoice } from '../units/choice.ts'

/** The units of a class: metric with newtons, metric with kilograms force, or imperial. */
export const UNIT_SETS = {
  metric: METRIC,
  kgf: { ...METRIC, force: 'kgf', rate: 'kgf/mm' },
  imperial: IMPERIAL,
} as const satisfies Record<string, UnitChoice>

export type UnitSet = keyof typeof UNIT_SETS

/** All that makes a sheet: the same settings make the same sheet. */
export interface Settings {
  seed: number
  /** calculators' ids; none: all of them */
  topics: readonly string[]
  level: Level | 'all'
  /** how many questions */
  n: number
  units: UnitSet
  /** decimal comma rather than point */
  comma: boolean
}

export const DEFAULTS: Settings = {
  seed: 1,
  topics: ['sag', 'preload-versus-rate', 'rear-rate', 'marks', 'coil-rate'],
  level: 'all',
  n: 8,
  units: 'metric',
  comma: false,
}

export const MOST_QUESTIONS = 40
export const LAST_SEED = 999_999

/** What was read from an address, and what could not be used of it, in words. */
export interface Read {
  settings: Settings
  problems: readonly string[]
}

const whole = (text: string, low: number, high: number): number | undefined => {
  const value = /^\d+$/.test(text) ? Number(text) : Number.NaN
  return value >= low && value <= high ? value : undefined
}

/** Reads the settings of an address; what it lacks or can't be used takes its default, and the latter is told. */
export function readSettings(query: URLSearchParams, known: readonly string[]): Read {
  const problems: string[] = []
  const numberOf = (name: 'seed' | 'n', low: number, high: number): number => {
    const text = query.get(name)
    if (text === null) return DEFAULTS[name]
    const value = whole(text.trim(), low, high)
    if (value === undefined)
      problems.push(
        `“${text}” can’t be used for ${name === 'n' ? 'the number of questions' : 'the seed'}: give a whole number from ${low} to ${high}. ${DEFAULTS[name]} is used.`,
      )
    return value ?? DEFAULTS[name]
  }
  const named = query.get('topics')
  const topics = named === null ? DEFAULTS.topics : named.split(',').filter((id) => id !== '')
  const unknown = topics.filter((id) => !known.includes(id))
  if (unknown.length > 0)
    problems.push(`There is no topic ${unknown.map((id) => `“${id}”`).join(', ')}: left out.`)
  const oneOf = <T extends string>(name: string, options: readonly T[], otherwise: T): T => {
    const text = query.get(name)
    if (text === null) return otherwise
    const found = options.find((option) => option === text)
    if (found === undefined)
      problems.push(`“${text}” is no ${name} of a sheet: use ${options.join(', ')}.`)
    return found ?? otherwise
  }
  const level = oneOf('level', ['all', '1', '2', '3'], String(DEFAULTS.level) as 'all')
  const settings: Settings = {
    seed: numberOf('seed', 0, LAST_SEED),
    topics: [...new Set(topics.filter((id) => known.includes(id)))],
    level: level === 'all' ? 'all' : (Number(level) as Level),
    n: numberOf('n', 1, MOST_QUESTIONS),
    units: oneOf('units', Object.keys(UNIT_SETS) as UnitSet[], DEFAULTS.units),
    comma: oneOf('mark', ['point', 'comma'], 'point') === 'comma',
  }
  return { settings, problems }
}

/** The address's query that makes this sheet again. */
export function queryOf({ seed, topics, level, n, units, comma }: Settings): string {
  const mark = comma ? '&mark=comma' : ''
  return `?seed=${seed}&topics=${topics.join(',')}&level=${level}&n=${n}&units=${units}${mark}`
}
