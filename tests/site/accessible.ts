import axe from 'axe-core'
import type { Page } from 'playwright-core'

export interface Accessible {
  role: string
  name: string
  description: string
}

/** What a screen reader is given of a page. */
export async function accessible(page: Page): Promise<Accessible[]> {
  const session = await page.context().newCDPSession(page)
  const { nodes } = await session.send('Accessibility.getFullAXTree')
  await session.detach()
  const text = (value: { value?: unknown } | undefined): string =>
    typeof value?.value === 'string' ? value.value : ''
  return nodes
    .filter(({ ignored }) => !ignored)
    .map(({ role, name, description }) => ({
      role: text(role),
      name: text(name),
      description: text(description),
    }))
}

/** What the accessibility checker finds on a page, in a line each. */
export async function violations(page: Page): Promise<string[]> {
  // the checker runs as a page script; evaluating it is not subject to the page's policy
  await page.evaluate(axe.source)
  return page.evaluate(async () => {
    const checker = (window as unknown as { axe: typeof axe }).axe
    const { violations: found } = await checker.run(document, {
      runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
      // what passes is not listed, and style sheets are not fetched a second time: both only take time
      resultTypes: ['violations'],
      preload: false,
    })
    return found.flatMap((violation) =>
      violation.nodes.map(
        (node) =>
          `${violation.id}: ${node.target.join(' ')} – ${node.failureSummary?.split('\n')[1]?.trim() ?? ''}`,
      ),
    )
  })
}
