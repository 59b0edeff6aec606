/** A number with its unit as prose shows it, taken apart: "−17.0 N/mm" is −17, in "N/mm", to one decimal. */
export interface ShownNumber {
  value: number
  unit: string
  digits: number
}

/** Takes apart a number with its unit; refuses a text that does not begin with a number. */
export function shownNumber(shown: string): ShownNumber {
  const match = /^([+−-]?)([\d\u202f\u00a0]*\d(?:\.(\d+))?)[\s\u00a0\u202f]*(.*)$/u.exec(shown)
  if (!match) throw new Error(`“${shown}” is no number with a unit`)
  const [, sign = '', figures = '', decimals = '', unit = ''] = match
  const size = Number(figures.replace(/[\s\u00a0\u202f]/gu, ''))
  return { value: sign === '−' || sign === '-' ? -size : size, unit, digits: decimals.length }
}
