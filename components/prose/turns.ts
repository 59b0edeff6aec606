/* The last step of a worked example, left to the reader: the script folds the answer behind a button. */

for (const turn of document.querySelectorAll<HTMLElement>('[data-turn]')) {
  const ask = turn.querySelector('.ask')
  const rest: Element[] = []
  for (let next = ask?.nextElementSibling ?? null; next; next = next.nextElementSibling) rest.push(next)
  const fold = document.createElement('details')
  const summary = document.createElement('summary')
  summary.textContent = 'Work it out, then look'
  fold.append(summary, ...rest)
  turn.append(fold)
}

/* Print never hides what a script closed. */
addEventListener('beforeprint', () => {
  for (const fold of document.querySelectorAll<HTMLDetailsElement>('main details:not([open])')) {
    fold.dataset['closedForScreen'] = ''
    fold.open = true
  }
})
addEventListener('afterprint', () => {
  for (const fold of document.querySelectorAll<HTMLDetailsElement>('details[data-closed-for-screen]')) {
    delete fold.dataset['closedForScreen']
    fold.open = false
  }
})
