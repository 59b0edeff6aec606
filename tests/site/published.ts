import type { Page } from 'playwright-core'

/** Where the site would be found if it were published: a name that is never given to a machine (RFC 2606). */
export const PUBLISHED = 'https://suspension.example/'

const UNKNOWN = '&quot;publicAddress&quot;:[0,null]'

/**
 * Gives the cards of a page what a build with SITE_URL gives them. The site is built once for all tests, without that address, and a card gets it as
 * one of its properties, which stand in its page.
 */
export async function publish(page: Page): Promise<void> {
  await page.route('**/*', async (route) => {
    if (route.request().resourceType() !== 'document') return route.fallback()
    const response = await route.fetch()
    const built = await response.text()
    if (!built.includes(UNKNOWN))
      throw new Error(`${route.request().url()} has no card, or was built with SITE_URL`)
    await route.fulfill({
      response,
      body: built.replaceAll(UNKNOWN, `&quot;publicAddress&quot;:[0,&quot;${PUBLISHED}&quot;]`),
    })
  })
}
