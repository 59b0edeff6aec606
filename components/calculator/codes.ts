import { renderSVG } from 'uqr'
import * as links from './link.ts'

export { links }

/* QR codes of a card's values: loaded when the page has come to rest, since what serves sending and paper must not compete with what is on the screen. */

/** Millimetres of paper to one module of a code: phones read four tenths from a worn print. */
const MODULE = 0.42

/** The QR code of an address, as SVG. */
export const codeOf = (href: string): string =>
  renderSVG(href, { ecc: 'L', border: 2, pixelSize: 1, blackColor: '#000', whiteColor: '#fff' })

/** Draws the code of the values in sight at a place of the page, in the moment in which the browser prints, whoever asked it to. */
export function codeOnPaper(place: HTMLElement, state: () => links.Linked): void {
  const draw = (): void => {
    const link = links.sentLink(state())
    if ('problem' in link) return place.replaceChildren(line(link.problem))
    const code = document.createElement('div')
    code.className = 'qr'
    code.innerHTML = codeOf(link.href)
    const svg = code.querySelector('svg')!
    svg.setAttribute('width', `${svg.viewBox.baseVal.width * MODULE}mm`)
    place.replaceChildren(
      code,
      line(`The code opens these values at ${link.href.replace(/\?.*/, '')}`),
    )
  }
  addEventListener('beforeprint', draw)
}

function line(text: string): HTMLElement {
  const made = document.createElement('p')
  made.textContent = text
  return made
}
