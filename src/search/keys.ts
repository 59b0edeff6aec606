const isField = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement &&
  (target.isContentEditable ||
    target.matches(
      'input:not([type=checkbox], [type=radio], [type=range], [type=button]), textarea, select',
    ))

/** `/` goes to the search field unless the reader is typing in another, Escape leaves it. */
export function searchKeys(field: HTMLInputElement): void {
  document.addEventListener('keydown', (event) => {
    if (
      event.key !== '/' ||
      event.ctrlKey ||
      event.metaKey ||
      event.altKey ||
      event.defaultPrevented ||
      isField(event.target)
    )
      return
    event.preventDefault()
    field.focus()
    field.select()
  })
  field.addEventListener('keydown', (event) => {
    if (event.key === 'Escape' && !event.defaultPrevented) field.blur()
  })
}
