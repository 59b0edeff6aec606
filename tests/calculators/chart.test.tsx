import { render } from 'preact-render-to-string'
import { describe, expect, test } from 'vitest'
import { Chart } from '../../src/drawing/Chart.tsx'
import type { ChartProps } from '../../src/drawing/Chart.tsx'
import { createSay } from '../../src/units/say.ts'
import { IMPERIAL, METRIC } from '../../src/units/choice.ts'
import { dots, numberAt, parts, ticks, valueAt } from './drawn.ts'
import { expectNear, expectSound } from './evaluated.ts'

const props: ChartProps = {
  prefix: 'p',
  say: createSay(METRIC),
  takeaway: 'Force rises with travel.',
  caption: 'Force against travel.',
  x: { label: 'travel', unit: 'mm', domain: [0, 0.12] },
  y: { label: 'force', unit: 'N', domain: [0, 3000] },
  curves: [
    {
      points: [
        [0, 270],
        [0.12, 2430],
      ],
      as: 'before',
      label: 'before',
    },
    {
      points: [
        [0, 450],
        [0.12, 2610],
      ],
      as: 'now',
      label: 'now',
    },
  ],
  points: [{ x: 0.03, y: 990, as: 'now', says: '990 N at 30 mm' }],
  table: { caption: 'The numbers', columns: ['travel', 'force'], rows: [['30', '990']] },
}

interface Box {
  left: number
  right: number
  y: number
}

/** Boxes of the labels beside curves, by the kit's own estimate of 7.4 units a character. */
function labels(markup: string): Box[] {
  return parts(markup, 'text.chart-label').map((label) => {
    const [x, y] = [numberAt(label, 'x'), numberAt(label, 'y')]
    const [anchor, text] = [label.getAttribute('text-anchor'), label.textContent]
    const width = text.length * 7.4
    const left = x - (anchor === 'end' ? width : anchor === 'middle' ? width / 2 : 0)
    return { left, right: left + width, y }
  })
}

describe('Chart', () => {
  test('Chart places a point by the axes that it prints', () => {
    const markup = render(<Chart {...props} />)
    expectSound(markup)
    const [[x, y]] = dots(markup, 'now') as [[number, number]]
    // the markup rounds to a hundredth of a unit: 0.004 mm and 0.2 N
    expectNear(valueAt(markup, 'x', x), 30, 0.01)
    expectNear(valueAt(markup, 'y', y), 990, 0.5)
  })

  test('Chart in inches and pounds puts the same point at the same place, between other ticks', () => {
    const [metric, imperial] = [METRIC, IMPERIAL].map((choice) =>
      render(<Chart {...props} say={createSay(choice)} />),
    ) as [string, string]
    const place = (markup: string) => valueAt(markup, 'x', dots(markup, 'now')[0]![0])
    expectNear(place(imperial) * 25.4, place(metric), 0.02) // rounding of the places
    expect(imperial).toContain('travel, in')
    expect(imperial).toContain('force, lbf')
  })

  test('Chart prints the decades of a logarithmic axis in 1, 2 and 5', () => {
    const markup = render(
      <Chart
        {...props}
        curves={[]}
        points={[]}
        y={{ label: 'viscosity', unit: 'mm²/s', domain: [1e-6, 1e-4], scale: 'log' }}
      />,
    )
    expect(ticks(markup, 'y').map(({ value }) => value)).toEqual([1, 2, 5, 10, 20, 50, 100])
  })

  test('Chart names itself by its takeaway, as a picture or as a group where points can be focused', () => {
    expect(render(<Chart {...props} />)).toContain(
      'role="group" aria-label="Force rises with travel."',
    )
    expect(render(<Chart {...props} points={[]} />)).toContain(
      'role="img" aria-label="Force rises with travel."',
    )
    expect(render(<Chart {...props} />)).toMatch(
      /tabindex="0" role="img" aria-label="990 N at 30 mm"/,
    )
  })

  test('Chart sets its table beside it, with heads for columns and rows', () => {
    const markup = render(<Chart {...props} />)
    expect(markup).toMatch(/<th scope="col">travel<\/th><th scope="col">force<\/th>/)
    expect(markup).toContain('<th scope="row">30</th><td>990</td>')
  })

  test('Chart keeps its labels apart and inside the drawing, however close the curves come', () => {
    for (const gap of [0, 20, 100, 500]) {
      const curves = [
        {
          points: [
            [0, 270],
            [0.12, 2430],
          ] as const,
          as: 'before' as const,
          label: 'before: preload 15 mm',
        },
        {
          points: [
            [0, 270 + gap],
            [0.12, 2430 + gap],
          ] as const,
          as: 'now' as const,
          label: 'now: preload 25 mm',
        },
      ]
      const [first, second] = labels(
        render(
          <Chart
            {...props}
            curves={curves}
            rules={[{ axis: 'y', at: 990, as: 'plain', label: 'the load' }]}
          />,
        ),
      ).slice(-2)
      const apart =
        Math.abs(first!.y - second!.y) >= 14 ||
        first!.right <= second!.left ||
        second!.right <= first!.left
      expect(apart, `gap ${gap}`).toBe(true)
      for (const { left, right } of [first!, second!]) {
        expect(left).toBeGreaterThanOrEqual(0)
        expect(right).toBeLessThanOrEqual(360)
      }
    }
  })

  test('Chart starts every id with its prefix', () => {
    const markup = render(<Chart {...props} prefix="other" />)
    for (const [, id] of markup.matchAll(/ id="([^"]*)"/g)) expect(id).toMatch(/^other-/)
  })
})
