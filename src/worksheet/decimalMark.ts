import type { Posed } from './pose.ts'

const NARROW = '\u202f'

/** A text with decimal commas; a comma that parts thousands becomes a narrow space. A tyre's or a thread's marking keeps its own way. */
export const commaText = (text: string): string =>
  text
    .replace(/(\d),(?=\d{3}(?!\d))/g, `$1${NARROW}`)
    .replace(/(?<![\d.]|M\d{1,2} × \d*)(\d+)\.(?=\d)/g, '$1,')

/** A question with decimal commas throughout. */
export const withComma = (posed: Posed): Posed => ({
  ...posed,
  text: commaText(posed.text),
  because: commaText(posed.because),
  options: posed.options.map((option) => ({ ...option, text: commaText(option.text) })),
})
