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
