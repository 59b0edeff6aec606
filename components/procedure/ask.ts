/* Asks once, in place: no browser dialogue, and the safe answer has the focus. */

interface Question {
  text: string
  yes: string
  no: string
}

/** Puts a question with two buttons in place of `host`'s content; calls `act` on yes, and puts the content back either way. */
export function ask(host: HTMLElement, { text, yes, no }: Question, act: () => void): void {
  const kept = [...host.childNodes]
  const before = document.activeElement
  const box = document.createElement('div')
  box.className = 'ask'
  box.setAttribute('role', 'group')
  const words = document.createElement('p')
  words.textContent = text
  words.id = `ask-${Math.random().toString(36).slice(2, 8)}`
  box.setAttribute('aria-labelledby', words.id)
  const button = (label: string, then: (() => void) | null): HTMLButtonElement => {
    const made = document.createElement('button')
    made.type = 'button'
    made.textContent = label
    made.addEventListener('click', () => {
      host.replaceChildren(...kept)
      then?.()
      if (before instanceof HTMLElement) before.focus()
    })
    return made
  }
  const safe = button(no, null)
  box.append(words, button(yes, act), safe)
  host.replaceChildren(box)
  safe.focus()
}
