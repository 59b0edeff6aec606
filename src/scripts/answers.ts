/* What the reader answered, on this device: for a question with options the place of the answer in the source, for a number
   the number. */

const KEY = 'witness-mark.answers'

export type Answers = Record<string, number>

export function readAnswers(): Answers {
  try {
    const stored: unknown = JSON.parse(localStorage.getItem(KEY) ?? '{}')
    return typeof stored === 'object' && stored !== null ? (stored as Answers) : {}
  } catch {
    return {}
  }
}

export function keep(id: string, choice: number | null): void {
  const { [id]: _gone, ...rest } = readAnswers()
  try {
    localStorage.setItem(KEY, JSON.stringify(choice === null ? rest : { ...rest, [id]: choice }))
  } catch {
    // not kept; the page works on
  }
}

export function button(text: string, className: string): HTMLButtonElement {
  const element = document.createElement('button')
  element.type = 'button'
  element.className = className
  element.textContent = text
  return element
}
