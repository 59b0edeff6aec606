import { readFile } from 'node:fs/promises'
import sharp from 'sharp'
import { paper } from '../site.ts'

/* The site's icons for home screens, from the one drawing in public/mark.svg. */

/** The drawing's own square. */
const SIDE = 26

/** An icon: its name, its side [px], and how much of that side the drawing takes. A system that cuts icons to a shape of its own leaves a circle of four fifths (W3C, Web Application Manifest, "safe zone"). */
export const icons = [
  { name: 'icon-192', side: 192, share: 1 },
  { name: 'icon-512', side: 512, share: 1 },
  { name: 'maskable-192', side: 192, share: 0.72 },
  { name: 'maskable-512', side: 512, share: 0.72 },
  { name: 'apple-touch-icon', side: 180, share: 0.86 },
] as const

/** An icon as PNG. One whose drawing does not take the whole side has no corners of its own. */
export async function drawIcon({ side, share }: (typeof icons)[number]): Promise<Buffer> {
  const mark = await readFile('public/mark.svg', 'utf8')
  const start = (SIDE * (1 - share)) / 2
  const size = SIDE * share
  const place = `x="${start}" y="${start}" width="${size}" height="${size}"`
  const inner = mark.replace('<svg ', `<svg ${place} `)
  const ground = share < 1 ? `<rect width="${SIDE}" height="${SIDE}" fill="${paper.light}"/>` : ''
  const whole = `<svg xmlns="http://www.w3.org/2000/svg" width="${side}" height="${side}" viewBox="0 0 ${SIDE} ${SIDE}">${ground}${inner}</svg>`
  return sharp(Buffer.from(whole), { density: 72 })
    .resize(side, side)
    .png({ compressionLevel: 9 })
    .toBuffer()
}
