import { toJSONSchema } from 'zod/v4/core'
import { fileSchema, VERSION } from '../../record/records.ts'

/** What a saved bench book looks like, for other programs: made from the schema that reads it back. */
export function GET(): Response {
  const schema = {
    title: `Witness Mark bench book, version ${VERSION}`,
    ...toJSONSchema(fileSchema),
  }
  return new Response(`${JSON.stringify(schema, null, 2)}\n`, {
    headers: { 'content-type': 'application/json' },
  })
}
