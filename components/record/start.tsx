import { render } from 'preact'
import { BookApp } from './BookApp.tsx'
import type { PageData } from './data.ts'

const place = document.querySelector('[data-bench-book]')
const data = document.querySelector('#book-data')?.textContent
if (place && data) {
  place.replaceChildren()
  render(<BookApp data={JSON.parse(data) as PageData} />, place)
}
