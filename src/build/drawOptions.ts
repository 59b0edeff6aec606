import { createHash } from 'node:crypto'
import { basename } from 'node:path'
import { fileURLToPath } from 'node:url'
import { defineMdastPlugin } from 'satteri'
import type { MdxJsxFlowElement } from 'satteri'

/* Authors write the right option where it comes to mind, and readers learn the place. So the order of options is drawn while building, from the question's own name: the same on the screen, without script and on paper, edition after edition. */

const QUESTIONS: readonly (string | null)[] = ['Predict', 'Recall', 'SelfCheck']
/** Changed only when an order by chance favours one place: tests/site/questions.test.ts says so. */
const DRAW = '16'

const lot = (question: string, option: number): string =>
  createHash('sha256').update(`${DRAW} ${question} ${option}`).digest('hex')

/** The order in which a question's options stand, by their places in the source; `last` are those that only make sense at the end ("All three."). */
export function drawnOrder(
  question: string,
  count: number,
  last: readonly number[] = [],
): number[] {
  const places = Array.from({ length: count }, (_, place) => place)
  const byLot = [...places].sort((a, b) => (lot(question, a) < lot(question, b) ? -1 : 1))
  return [
    ...byLot.filter((place) => !last.includes(place)),
    ...places.filter((place) => last.includes(place)),
  ]
}

const attribute = (node: MdxJsxFlowElement, name: string): unknown =>
  node.attributes.find((each) => each.type === 'mdxJsxAttribute' && each.name === name)
const isOption = (node: { type: string }): node is MdxJsxFlowElement =>
  node.type === 'mdxJsxFlowElement' && (node as MdxJsxFlowElement).name === 'Option'

/** Puts the options of each question in their drawn order, each with its place in the source as `place`, by which an answer is remembered. */
export const drawnOptions = defineMdastPlugin({
  name: 'drawn-options',
  mdxJsxFlowElement(node, context) {
    if (!QUESTIONS.includes(node.name)) return
    const options = node.children.filter(isOption)
    const id = attribute(node, 'id') as { value?: unknown } | undefined
    if (typeof id?.value !== 'string' || !context.fileURL)
      throw new Error(`<${node.name}> needs an id, written out`)
    const question = `${basename(fileURLToPath(context.fileURL), '.mdx')}#${id.value}`
    const last = options.flatMap((option, place) => (attribute(option, 'last') ? [place] : []))
    const placed = options.map((option, place): MdxJsxFlowElement => ({
      ...option,
      attributes: [
        ...option.attributes,
        { type: 'mdxJsxAttribute', name: 'place', value: String(place) },
      ],
    }))
    const order = drawnOrder(question, options.length, last)
    let next = 0
    context.setProperty(
      node,
      'children',
      node.children.map((child) => (isOption(child) ? placed[order[next++]!]! : child)),
    )
  },
})
