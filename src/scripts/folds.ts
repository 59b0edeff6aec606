/* Folds: a derivation is open as served and closed by this script for readers who came for the answer; an address that leads
   to it or to its heading opens it. Print never hides what a script closed. */

for (const fold of document.querySelectorAll<HTMLDetailsElement>('details.steps-in-full'))
  fold.open = false

function openAddressed(): void {
  const target = document.getElementById(decodeURIComponent(location.hash.slice(1)))
  if (!target) return
  const after = target.nextElementSibling
  const fold =
    target.closest<HTMLDetailsElement>('details.steps-in-full') ??
    target.querySelector<HTMLDetailsElement>('details.steps-in-full') ??
    after?.querySelector<HTMLDetailsElement>(':scope > details.steps-in-full')
  if (!fold || fold.open) return
  fold.open = true
  target.scrollIntoView({ block: 'start' })
}

openAddressed()
addEventListener('hashchange', openAddressed)

addEventListener('beforeprint', () => {
  for (const fold of document.querySelectorAll<HTMLDetailsElement>('main details:not([open])')) {
    fold.dataset['closedForScreen'] = ''
    fold.open = true
  }
})
addEventListener('afterprint', () => {
  for (const fold of document.querySelectorAll<HTMLDetailsElement>(
    'details[data-closed-for-screen]',
  )) {
    delete fold.dataset['closedForScreen']
    fold.open = false
  }
})
