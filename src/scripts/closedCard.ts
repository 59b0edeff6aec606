/* The calculator that a prediction keeps closed until it is answered or skipped. */

/** The calculator that a prediction keeps closed: the next one after it in the chapter. */
export function calculatorAfter(question: HTMLElement): HTMLElement | null {
  for (const place of document.querySelectorAll<HTMLElement>('[data-calculator-place]')) {
    if (question.compareDocumentPosition(place) & Node.DOCUMENT_POSITION_FOLLOWING) return place
  }
  return null
}

export function closeCalculator(place: HTMLElement): void {
  place.classList.add('closed')
  const note = document.createElement('p')
  note.className = 'closed-note'
  note.textContent = 'The calculator opens when you have said what you expect, or skipped.'
  place.prepend(note)
}

export function openCalculator(place: HTMLElement): void {
  place.classList.remove('closed')
  place.querySelector('.closed-note')?.remove()
}

/** How much of the screen may stand between a heading and its card for both to be shown. */
const HEADING_SHARE = 0.4

/** Scrolls to the card, with the heading and the words before it where there is room for them, and takes the keyboard's place to `focus`. */
export function goTo(place: HTMLElement, focus: HTMLElement): void {
  let heading = place.previousElementSibling
  while (heading && !heading.matches('h2, h3')) heading = heading.previousElementSibling
  const above = heading
    ? place.getBoundingClientRect().top - heading.getBoundingClientRect().top
    : Infinity
  const start = heading && above < HEADING_SHARE * innerHeight ? heading : place
  start.scrollIntoView({ block: 'start' })
  focus.tabIndex = -1
  focus.focus({ preventScroll: true })
}

/** Opens the closed card that an address leads into, and goes there: an element out of sight can't be scrolled to by the browser. */
export function followAddress(): void {
  const target =
    location.hash.length > 1
      ? document.getElementById(decodeURIComponent(location.hash.slice(1)))
      : null
  const place = target?.closest<HTMLElement>('[data-calculator-place].closed')
  if (!target || !place) return
  openCalculator(place)
  target.scrollIntoView({ block: 'start' })
  target.tabIndex = -1
  target.focus({ preventScroll: true })
}
