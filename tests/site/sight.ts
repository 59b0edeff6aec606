import type { Page } from 'playwright-core'

/** What a reader sees while one control is in hand. */
export interface Sight {
  control: string
  /** the drawing in front is wholly on the screen and nothing lies over it */
  figure: boolean
  strip: boolean
  /** something lies over the control, or it is off the screen */
  covered: boolean
  /** the stage keeps its place as the page scrolls */
  pinned: boolean
}

/** Waits for a page's card, behind a prediction if need be; false where the page has none. */
export async function openCard(page: Page): Promise<boolean> {
  await page.waitForFunction(() => document.querySelectorAll('astro-island[ssr]').length === 0)
  const skip = page.getByRole('button', { name: /Skip to the calculator/ }).first()
  if ((await skip.count()) > 0 && (await skip.isVisible())) await skip.click()
  return (await page.locator('form[data-calculator] [data-stage]').count()) > 0
}

/**
 * Brings controls of the page's first card to where a hand has them, takes and moves them, and tells what is in sight: every control, or so many spread evenly
 * from the first to the last. A stage whose figure is a list, which is read and not watched, has only its strip to keep in sight.
 */
export async function sightOf(page: Page, most = Infinity): Promise<Sight[]> {
  return page.evaluate(async (count) => {
    const form = document.querySelector('form[data-calculator]')!
    for (const fold of form.querySelectorAll<HTMLDetailsElement>('.controls details'))
      fold.open = true
    const stage = form.querySelector<HTMLElement>('[data-stage]')!
    const pinned = getComputedStyle(stage).position === 'sticky'
    const frame = (): Promise<unknown> => new Promise((done) => requestAnimationFrame(done))
    const onScreen = ({ top, bottom, left, right }: DOMRect): boolean =>
      top >= -0.5 && bottom <= innerHeight + 0.5 && left >= -0.5 && right <= innerWidth + 0.5
    /** Whether the element is what a finger at this place of it would meet. */
    const meets = (element: Element, x: number, y: number): boolean => {
      const met = document.elementFromPoint(x, y)
      return met !== null && (element.contains(met) || met.contains(element))
    }
    const whole = (element: Element | undefined | null): boolean => {
      if (!element) return false
      const box = element.getBoundingClientRect()
      const corners = [
        [box.left + 2, box.top + 2],
        [box.right - 2, box.top + 2],
        [box.left + 2, box.bottom - 2],
        [box.right - 2, box.bottom - 2],
      ] as const
      return (
        box.height > 0 &&
        onScreen(box) &&
        corners.every(([x, y]) => stage.contains(document.elementFromPoint(x, y)))
      )
    }
    const all = [
      ...form.querySelectorAll<HTMLInputElement | HTMLSelectElement>(
        '.controls .bar input, .controls .row:not(:has(.bar)) input[type="text"], .controls select, .controls input[type="radio"]:checked',
      ),
    ].filter((each) => each.offsetParent !== null)
    const controls =
      all.length <= count
        ? all
        : Array.from(
            { length: count },
            (_, at) => all[Math.round((at * (all.length - 1)) / Math.max(1, count - 1))]!,
          )
    const isList = stage.querySelector('.ways') !== null
    const seen: Sight[] = []
    for (const control of controls) {
      // a thumb has it at three fifths of the screen; a mouse wherever the reader has put the card, whose top comes to the top of the screen
      const wide = matchMedia('(min-width: 62.01rem)').matches
      if (wide) form.scrollIntoView({ block: 'start' })
      const box = control.getBoundingClientRect()
      const at = box.top + box.height / 2
      if (!wide || at > innerHeight * 0.9 || at < 0)
        scrollBy(0, at - innerHeight * (wide ? 0.8 : 0.6))
      control.focus({ preventScroll: true })
      await frame()
      if (control instanceof HTMLInputElement && control.type === 'range') {
        const set = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')!.set!
        const [low, high, step] = [control.min, control.max, control.step].map(Number)
        const value = Number(control.value)
        set.call(
          control,
          String(value + step! <= high! ? value + step! : Math.max(low!, value - step!)),
        )
        control.dispatchEvent(new Event('input', { bubbles: true }))
      }
      await frame()
      await frame()
      const drawings = [
        ...stage.querySelectorAll<SVGSVGElement>('[data-figure] .fig > svg'),
      ].filter((svg) => svg.getBoundingClientRect().width > 0)
      const { left, top, width, height } = control.getBoundingClientRect()
      seen.push({
        control: control.closest<HTMLElement>('[data-field]')?.dataset['field'] ?? control.name,
        figure: isList || (drawings.length > 0 && drawings.every(whole)),
        strip: whole(stage.querySelector('[data-strip]')),
        covered: !meets(control.closest('label') ?? control, left + width / 2, top + height / 2),
        pinned,
      })
    }
    return seen
  }, most)
}
