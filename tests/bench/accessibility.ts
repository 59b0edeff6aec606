/** Runs the accessibility checker on every page of the built site, light and wide, dark and narrow: `npm run accessibility`. The tests run it on a share of the pages that are alike. */
import { openSite } from '../site/browser.ts'
import { inspect } from '../site/inspect.ts'
import { builtPages } from '../site/pages.ts'

const site = await openSite()
const pages = builtPages().filter((page) => page !== '/404.html')
const faults = [
  ...(await inspect(site, pages, { viewport: { width: 1280, height: 900 } })),
  ...(await inspect(site, pages, {
    viewport: { width: 360, height: 740 },
    colorScheme: 'dark',
  })),
]
for (const { page, fault } of faults) console.log(`${page}: ${fault}`)
console.log(`${pages.length} pages, ${faults.length} faults`)
await site.close()
process.exitCode = faults.length > 0 ? 1 : 0
