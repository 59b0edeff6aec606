import { toJSONSchema } from 'zod/v4/core'
import { bookSchema } from '../../record/book.ts'

/** What a saved bench book looks like, for other programs. */
export function GET(): Response {
  const schema = { title: 'Witness Mark bench book, version 1', ...toJSONSchema(bookSchema) }
  return new Response(`${JSON.stringify(schema, null, 2)}\n`, { headers: { 'content-type': 'application/json' } })
}
