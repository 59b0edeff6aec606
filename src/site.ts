import { base } from './base.ts'

/** An address inside the site: root-relative `/chapters/sag/` becomes right under any base path. */
export const path = (address: string): string => base + address.replace(/^\//, '')

/** The main parts, in the order of the header. */
export const parts = [
  { name: 'Chapters', address: 'chapters/' },
  { name: 'Calculators', address: 'calculators/' },
  { name: 'Procedures', address: 'procedures/' },
  { name: 'Job cards', address: 'jobs/' },
  { name: 'Cautions', address: 'cautions/' },
  { name: 'Lessons', address: 'lessons/' },
  { name: 'Bench book', address: 'record/' },
] as const

/** What stands in the footer. */
export const further = [
  { name: 'Something feels wrong', address: 'symptoms/' },
  { name: 'Worksheets', address: 'worksheets/' },
  { name: 'Reading order', address: 'reading/' },
  { name: 'Wrong ideas', address: 'wrong-ideas/' },
  { name: 'Formulas', address: 'formulas/' },
  { name: 'Glossary', address: 'glossary/' },
  { name: 'Checks', address: 'checks/' },
  { name: 'Sources', address: 'sources/' },
  { name: 'Accessibility', address: 'accessibility/' },
  { name: 'What is kept', address: 'privacy/' },
  { name: 'Editions', address: 'editions/' },
  { name: 'Licences', address: 'licences/' },
] as const

/** The ground of a page in either theme, as `src/styles/base.css` has it: what is round the page takes it too. */
export const paper = { light: '#f6f2e8', dark: '#181715' } as const

/** When this edition of the site was built: shown in the footer and on prints. */
export const edition = new Date().toISOString().slice(0, 10)
