import { searchKeys } from './keys.ts'

const box = document.querySelector<HTMLFormElement>('[data-search-box]')
const field = box?.querySelector<HTMLInputElement>('[name=q]')

if (box && field) {
  searchKeys(field)
  // the index is 100 kB: no page loads it before a reader turns to the box
  field.addEventListener(
    'focus',
    () =>
      void import('./suggest.ts').then(({ suggest }) => suggest(box, field)).catch(() => undefined),
    { once: true },
  )
}
