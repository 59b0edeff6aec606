import { readFileSync } from 'node:fs'
import sharp from 'sharp'
import { expect, test } from 'vitest'
import { paper } from '../../src/site.ts'
import { builtText } from './pages.ts'

/* What a device that installs the site is told of it. */

interface Manifest {
  name: string
  start_url: string
  scope: string
  display: string
  theme_color: string
  icons: { src: string; sizes: string; purpose: string }[]
}
const manifest = JSON.parse(readFileSync('dist/manifest.webmanifest', 'utf8')) as Manifest

test('every page names the manifest, an icon for home screens, and a colour for each theme', () => {
  for (const page of ['/', '/record/', '/404.html', '/embed/sag/']) {
    const html = builtText(page)
    expect(html).toContain('<link rel="manifest" href="/manifest.webmanifest">')
    expect(html).toContain('<link rel="apple-touch-icon" href="/icons/apple-touch-icon.png">')
    expect(html.match(/<meta name="theme-color"[^>]*>/g)).toHaveLength(2)
  }
})

test('the colours round the page are those of its ground in either theme', () => {
  const grounds = [...readFileSync('src/styles/base.css', 'utf8').matchAll(/--paper: (#\w+)/g)]
  expect(new Set(grounds.map(([, colour]) => colour))).toEqual(new Set(Object.values(paper)))
  expect(manifest.theme_color).toBe(paper.light)
})

test('the manifest has what browsers ask for to install a site, and its icons are as large as it says', async () => {
  const { start_url, scope, display } = manifest
  expect({ start_url, scope, display }).toEqual({
    start_url: '/',
    scope: '/',
    display: 'standalone',
  })
  expect(manifest.icons.map(({ sizes, purpose }) => `${purpose} ${sizes}`).sort()).toEqual([
    'any 192x192',
    'any 512x512',
    'maskable 192x192',
    'maskable 512x512',
  ])
  for (const { src, sizes } of [
    ...manifest.icons,
    { src: '/icons/apple-touch-icon.png', sizes: '180x180' },
  ]) {
    const { width, height, format } = await sharp(`dist${src}`).metadata()
    expect([`${width}x${height}`, format], src).toEqual([sizes, 'png'])
  }
})

test('a maskable icon keeps all of the mark in the circle that no system cuts, and has no clear corner', async () => {
  const { data, info } = await sharp('dist/icons/maskable-512.png')
    .ensureAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true })
  const ground = [0xf6, 0xf2, 0xe8, 0xff]
  let furthest = 0
  for (let y = 0; y < info.height; y++)
    for (let x = 0; x < info.width; x++) {
      const at = 4 * (y * info.width + x)
      // a difference of 24 of 255 is more than the smoothing of an edge against the ground
      if (ground.some((value, part) => Math.abs(data[at + part]! - value) > 24))
        furthest = Math.max(furthest, Math.hypot(x - 255.5, y - 255.5))
    }
  // W3C, Web Application Manifest, "safe zone": a circle whose radius is two fifths of the icon's side
  expect(furthest).toBeLessThan(0.4 * 512)
  expect(furthest).toBeGreaterThan(0.3 * 512)
})
