/** An argument that makes no sense: which one, what it was, and what it has to be. */
export class DomainError extends RangeError {
  readonly parameter: string
  readonly value: unknown
  readonly reason: string

  constructor(parameter: string, value: unknown, reason: string) {
    super(`${parameter} ${reason}; got ${show(value)}`)
    this.name = 'DomainError'
    this.parameter = parameter
    this.value = value
    this.reason = reason
  }
}

function show(value: unknown): string {
  if (typeof value === 'string') return `'${value}'`
  if (typeof value !== 'object' || value === null) return String(value)
  return Array.isArray(value) ? 'a list' : 'an object'
}

// The guards hand their value back, so that a check can stand where the value is used.

/** Refuses what is not a finite number. */
export function finite(parameter: string, value: unknown): number {
  if (!Number.isFinite(value)) throw new DomainError(parameter, value, 'must be a finite number')
  return value as number
}

/** Refuses what is not a finite number above 0. */
export function positive(parameter: string, value: unknown): number {
  const number = finite(parameter, value)
  if (number <= 0) throw new DomainError(parameter, value, 'must be above 0')
  return number
}

/** Refuses what is not a finite number of at least 0. */
export function nonNegative(parameter: string, value: unknown): number {
  const number = finite(parameter, value)
  if (number < 0) throw new DomainError(parameter, value, 'must not be below 0')
  return number
}

/** Refuses what is not a finite number from low to high, both ends included. */
export function within(parameter: string, value: unknown, low: number, high: number): number {
  const number = finite(parameter, value)
  if (number < low || number > high)
    throw new DomainError(parameter, value, `must lie from ${low} to ${high}`)
  return number
}

/** Refuses what is not a finite number strictly between low and high. */
export function between(parameter: string, value: unknown, low: number, high: number): number {
  const number = finite(parameter, value)
  if (number <= low || number >= high)
    throw new DomainError(parameter, value, `must lie between ${low} and ${high}, ends excluded`)
  return number
}

/** Refuses what is not a whole number of at least `least`. */
export function wholeNumber(parameter: string, value: unknown, least = 0): number {
  const number = finite(parameter, value)
  if (!Number.isInteger(number) || number < least)
    throw new DomainError(parameter, value, `must be a whole number of at least ${least}`)
  return number
}

/** Refuses a text that is not one of the options. */
export function oneOf<Option extends string>(
  parameter: string,
  value: unknown,
  options: readonly Option[],
): Option {
  const found = options.find((option) => option === value)
  if (found === undefined)
    throw new DomainError(parameter, value, `must be one of ${options.join(', ')}`)
  return found
}

/** Refuses what is not a list of at least `least` entries. */
export function list<Entry>(
  parameter: string,
  value: readonly Entry[],
  least = 0,
): readonly Entry[] {
  if (!Array.isArray(value)) throw new DomainError(parameter, value, 'must be a list')
  if (value.length < least)
    throw new DomainError(parameter, value, `must hold at least ${least} entries`)
  return value
}

/** Refuses an argument that is not an object with named fields; every public call makes this check first. */
export function record<Fields extends object>(parameter: string, value: Fields): Fields {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    throw new DomainError(parameter, value, 'must be an object with named fields')
  }
  return value
}

/** Refuses a result that outgrew the range of a number, because the arguments were far from anything that can be built. */
export function representable(parameter: string, result: number): number {
  if (!Number.isFinite(result))
    throw new DomainError(parameter, result, 'is too large or too small to compute with')
  return result
}
