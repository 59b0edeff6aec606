import katex from 'katex'
import { defineMdastPlugin } from 'satteri'
import type { MdastContent } from 'satteri'

/** KaTeX's MathML alone: screen readers read it, and unlike its HTML output it needs no style attributes, which the security policy blocks. */
function render(tex: string, displayMode: boolean): string {
  const html = katex.renderToString(tex, {
    displayMode,
    output: 'mathml',
    throwOnError: true,
    strict: 'error',
  })
  return displayMode
    ? `<div class="formula" tabindex="0" role="group" aria-label="Formula">${html}</div>`
    : html
}

function asJsx(type: 'mdxJsxFlowElement' | 'mdxJsxTextElement', html: string): MdastContent {
  const value = { type: 'mdxJsxAttributeValueExpression', value: JSON.stringify(html) }
  return {
    type,
    name: 'Fragment',
    attributes: [{ type: 'mdxJsxAttribute', name: 'set:html', value }],
    children: [],
  } as MdastContent
}

/** Turns `$…$` and `$$…$$` into MathML while building; a formula that KaTeX can't read stops the build. */
export const maths = defineMdastPlugin({
  name: 'maths-to-mathml',
  math(node, context) {
    context.replaceNode(node, asJsx('mdxJsxFlowElement', render(node.value, true)))
  },
  inlineMath(node, context) {
    context.replaceNode(node, asJsx('mdxJsxTextElement', render(node.value, false)))
  },
})
