/** The mark of this page's edition, which the build writes into every page; empty while writing. */
export const editionMark = (): string =>
  document.querySelector<HTMLMetaElement>('meta[name="edition"]')?.content ?? ''

/** The address of a file that keeps its name from edition to edition, so that a page gets its own edition's or none. */
export const ofThisEdition = (address: string): string => {
  const mark = editionMark()
  return mark === '' ? address : `${address}?edition=${mark}`
}
