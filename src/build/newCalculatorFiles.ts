const camel = (id: string): string =>
  id.replaceAll(/-(.)/g, (_, letter: string) => letter.toUpperCase())

const title = (id: string): string => id.charAt(0).toUpperCase() + id.slice(1).replaceAll('-', ' ')

const statement = (
  id: string,
  order: number,
): string => `import { defineStatement } from '../../machine/statement.ts'

const inputs = {
  load: {
    kind: 'quantity',
    label: 'Load on the spring',
    quantity: 'force',
    unit: 'N',
    range: [0, 2000],
    step: 10,
    default: 500,
  },
  rate: {
    kind: 'quantity',
    label: 'Spring rate',
    quantity: 'rate',
    unit: 'N/mm',
    range: [5, 20],
    step: 0.5,
    default: 9,
    typical: [8, 11],
    typicalFrom: 'common practice, no published source',
  },
} as const

const outputs = {
  squeeze: { label: 'Squeeze', quantity: 'length', unit: 'mm', digits: 1, lead: true },
} as const

export default defineStatement({
  id: '${id}',
  order: ${order},
  version: 1,
  title: '${title(id)}',
  question: 'Which spring?',
  answers: 'How far a spring squeezes under a load.',
  assumes: ['The spring keeps one rate all the way.'],
  leavesOut: ['Friction, which holds it anywhere within a band.'],
  inputs,
  outputs,
})
`

const solve = `import { springDeflection } from '../../core/index.ts'
import { defineWork } from '../../machine/work.ts'
import type statement from './statement.ts'

export default defineWork<typeof statement>({
  solve: ({ load, rate }) => ({
    outputs: { squeeze: springDeflection([{ rate }], load) },
    picture: () => undefined,
  }),
})
`

const remarks = `import { defineRemarks } from '../../machine/remark.ts'
import { exists } from '../../units/interval.ts'
import type statement from './statement.ts'

export default defineRemarks<typeof statement>(({ output, say }) => [
  {
    kind: 'reading',
    text: \`The spring squeezes by \${exists(output.squeeze) ? say.span(output.squeeze, 'mm', 1) : ''}.\`,
  },
  { kind: 'next', text: 'Test the spring on a scale before you go by its printed rate.' },
])
`

const figure = (id: string): string => `import type { FigureProps } from '../../drawing/props.ts'
import { round } from '../../drawing/state.ts'
import { ends } from '../../units/interval.ts'
import type ${camel(id)} from './statement.ts'

/** The squeeze as a bar, to scale. */
export default function Figure({ now, say }: FigureProps<typeof ${camel(id)}>) {
  const [low, high] = ends(now.output.squeeze) ?? [0, 0]
  const long = round(((low + high) / 2) * 1000)
  return (
    <figure class="fig">
      <svg
        viewBox="0 0 420 60"
        role="img"
        aria-label={\`Squeezed by \${say.range(low, high, 'mm', 1)}\`}
      >
        <rect class="metal" x={10} y={24} width={Math.min(400, long)} height={12} />
      </svg>
      <figcaption>The squeeze of the spring, to scale.</figcaption>
    </figure>
  )
}
`

const worked = `import type { WorkedCase } from '../../machine/worked.ts'

const checks: readonly WorkedCase[] = [
  {
    title: '500 N on 10 N/mm',
    given: { load: 500, rate: 10 },
    expect: { squeeze: { value: 50, tolerance: 1e-9 } },
    working: 'Worked by hand: 500 / 10 = 50 mm.',
  },
]

export default checks
`

const questions = (id: string): string => `import { exercisesFor } from '../../machine/question.ts'
import ${camel(id)} from './statement.ts'

export default exercisesFor(${camel(id)}, [
  {
    id: '${id}-squeeze',
    level: 1,
    draw: { load: [400, 500, 600], rate: [8, 10] },
    question: ({ load, rate }, write) =>
      \`A spring of \${write(rate, 'N/mm')} carries \${write(load, 'N')}. How far does it squeeze?\`,
    asks: 'squeeze',
    wrong: [
      { idea: 'both legs share it', answer: ({ load, rate }) => load / rate / 2 },
      { idea: 'two of them carry it', answer: ({ load, rate }) => (2 * load) / rate },
      { idea: 'half is lost to friction', answer: ({ load, rate }) => (1.5 * load) / rate },
    ],
    because: 'Load over rate.',
  },
])
`

const page = (id: string, order: number): string => `---
summary: How far a spring squeezes under a load.
order: ${order / 10}
chapters: [spring-rate]
procedures: [test-a-spring]
cautions: []
measure:
  - input: load
    how: Weigh what stands on the spring.
words: [squeeze]
sources: []
---

${title(id)} tells how far a spring squeezes under a load.
`

/** The text of every file of a new calculator, by its path. */
export const templates = (id: string, order: number): Readonly<Record<string, string>> => ({
  [`src/calculators/${id}/statement.ts`]: statement(id, order),
  [`src/calculators/${id}/solve.ts`]: solve,
  [`src/calculators/${id}/remarks.ts`]: remarks,
  [`src/calculators/${id}/Figure.tsx`]: figure(id),
  [`src/calculators/${id}/worked.ts`]: worked,
  [`src/calculators/${id}/questions.ts`]: questions(id),
  [`content/calculators/${id}.mdx`]: page(id, order),
})
