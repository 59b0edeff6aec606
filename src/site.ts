/** Base path of the site with a slash at its end. */
export const base = import.meta.env.BASE_URL.replace(/\/?$/, '/')

/** An address inside the site: root-relative `/chapters/sag/` becomes right under any base path. */
export const path = (address: string): string => base + address.replace(/^\//, '')

/** The main parts, in the order of the header. */
export const parts = [
  { name: 'Chapters', address: 'chapters/' },
  { name: 'Calculators', address: 'calculators/' },
  { name: 'Procedures', address: 'procedures/' },
  { name: 'Cautions', address: 'cautions/' },
  { name: 'Bench book', address: 'record/' },
] as const

/** What stands in the footer. */
export const further = [
  { name: 'Something feels wrong', address: 'symptoms/' },
  { name: 'Reading order', address: 'reading/' },
  { name: 'Glossary', address: 'glossary/' },
  { name: 'Checks', address: 'checks/' },
  { name: 'Sources', address: 'sources/' },
  { name: 'Accessibility', address: 'accessibility/' },
  { name: 'Licences', address: 'licences/' },
] as const

/** When this edition of the site was built: shown in the footer and on prints. */
export const edition = new Date().toISOString().slice(0, 10)
