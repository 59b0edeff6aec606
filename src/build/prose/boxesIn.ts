/** The boxes in a rendered text whose opening tag holds `mark`, each whole, with what is nested in it. */
export function boxesIn(html: string, mark: string): string[] {
  const boxes: string[] = []
  for (const opening of html.matchAll(new RegExp(`<(div|section)\\b[^>]*${mark}[^>]*>`, 'g'))) {
    const tags = new RegExp(`<(/?)${opening[1]}\\b`, 'g')
    tags.lastIndex = opening.index
    let depth = 0
    for (let tag = tags.exec(html); tag !== null; tag = tags.exec(html)) {
      depth += tag[1] === '/' ? -1 : 1
      if (depth > 0) continue
      boxes.push(html.slice(opening.index, html.indexOf('>', tag.index) + 1))
      break
    }
  }
  return boxes
}

/** A box on another page than its own: links to places of its page lead there. */
export const elsewhere = (box: string, page: string): string =>
  box.replaceAll('href="#', `href="${page}#`)
