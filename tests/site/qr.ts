import readCode from 'jsqr'
import type { Locator } from 'playwright-core'

/** Side of the picture that is read [pixels]: seven to a module of the largest code that the site draws. */
const SIDE = 820

/** What a QR code on a page says, as a phone would read it: the drawing is turned into dots and read by jsQR. Null where it can't be read. */
export async function readQr(svg: Locator): Promise<string | null> {
  const grey = await svg.evaluate(async (drawn, side) => {
    const image = new Image()
    image.src = `data:image/svg+xml,${encodeURIComponent(new XMLSerializer().serializeToString(drawn))}`
    await image.decode()
    const canvas = document.createElement('canvas')
    canvas.width = canvas.height = side
    const context = canvas.getContext('2d')!
    context.drawImage(image, 0, 0, side, side)
    const { data } = context.getImageData(0, 0, side, side)
    let dots = ''
    for (let at = 0; at < data.length; at += 4) dots += data[at]! < 128 ? '1' : '0'
    return dots
  }, SIDE)
  const pixels = new Uint8ClampedArray(SIDE * SIDE * 4).fill(255)
  for (let at = 0; at < grey.length; at++) if (grey[at] === '1') pixels.fill(0, at * 4, at * 4 + 3)
  return readCode(pixels, SIDE, SIDE, { inversionAttempts: 'dontInvert' })?.data ?? null
}
