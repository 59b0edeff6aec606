import { icons } from '../build/icons.ts'
import { paper, path } from '../site.ts'

/** What a device that installs the site as an app is told of it. */
export function GET(): Response {
  const manifest = {
    id: path(''),
    name: 'Witness Mark',
    short_name: 'Witness Mark',
    description:
      'Motorcycle suspension set-up with numbers that hold: chapters, calculators, procedures, and a bench book that stays on the device.',
    lang: 'en-GB',
    start_url: path(''),
    scope: path(''),
    display: 'standalone',
    background_color: paper.light,
    theme_color: paper.light,
    icons: icons
      .filter(({ name }) => name !== 'apple-touch-icon')
      .map(({ name, side }) => ({
        src: path(`icons/${name}.png`),
        sizes: `${side}x${side}`,
        type: 'image/png',
        purpose: name.startsWith('maskable') ? 'maskable' : 'any',
      })),
    shortcuts: [
      { name: 'Bench book', url: path('record/') },
      { name: 'Job cards', url: path('jobs/') },
      { name: 'Calculators', url: path('calculators/') },
    ],
  }
  return new Response(`${JSON.stringify(manifest, null, 1)}\n`, {
    headers: { 'content-type': 'application/manifest+json' },
  })
}
