/* Escape dismisses a glossary tip without moving the focus. */
document.addEventListener('keydown', (event) => {
  if (event.key !== 'Escape') return
  for (const term of document.querySelectorAll<HTMLElement>('.term:hover, .term:focus'))
    term.dataset['dismissed'] = ''
})
for (const type of ['mouseout', 'focusout']) {
  document.addEventListener(type, (event) => {
    if (event.target instanceof HTMLElement)
      delete event.target.closest<HTMLElement>('.term')?.dataset['dismissed']
  })
}
