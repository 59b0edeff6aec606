import { z } from 'astro/zod'

/* The change log as an Atom feed (RFC 4287). */

/** An edition as content/editions.yaml has it. */
export const edition = z.strictObject({
  id: z.string(),
  title: z.string(),
  /** none while it is still being written */
  date: z.iso
    .date()
    .transform((day) => new Date(day))
    .optional(),
  summary: z.string(),
  changes: z.array(z.string()).min(1),
})

export interface Edition {
  id: string
  data: Omit<z.infer<typeof edition>, 'id'>
}

/** The edition that is still being written first, then by date. */
export const newestFirst = <Dated extends Edition>(editions: readonly Dated[]): Dated[] =>
  editions.toSorted(
    (a, b) => (b.data.date?.getTime() ?? Infinity) - (a.data.date?.getTime() ?? Infinity) || 0,
  )

const ESCAPES: Record<string, string> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' }
const escape = (text: string): string => text.replace(/[&<>"]/g, (sign) => ESCAPES[sign] ?? sign)

/** What identifies the feed and its entries for ever, wherever the site is (RFC 4151). */
const TAG = 'tag:witness-mark.invalid,2026:editions'

function entry({ id, data }: Edition, updated: Date, page: string): string {
  const list = data.changes.map((change) => `<li>${escape(change)}</li>`).join('')
  const content = `<p>${escape(data.summary)}</p><ul>${list}</ul>`
  return [
    '  <entry>',
    `    <id>${TAG}/${escape(id)}</id>`,
    `    <title>${escape(data.title)}</title>`,
    `    <updated>${updated.toISOString()}</updated>`,
    `    <link rel="alternate" type="text/html" href="${escape(`${page}#${id}`)}"/>`,
    `    <content type="html">${escape(content)}</content>`,
    '  </entry>',
  ].join('\n')
}

/**
 * The feed of all editions, the newest first. `home` is the site's front page: its public address, or its base path where it has none. An edition
 * without a date counts as changed at `built`.
 */
export function atomFeed(editions: readonly Edition[], home: string, built: Date): string {
  const page = `${home}editions/`
  const changed = (edition: Edition): Date => edition.data.date ?? built
  const newest = Math.max(...editions.map((edition) => changed(edition).getTime()))
  return [
    '<?xml version="1.0" encoding="utf-8"?>',
    '<feed xmlns="http://www.w3.org/2005/Atom" xml:lang="en-GB">',
    `  <id>${TAG}</id>`,
    '  <title>Editions of Witness Mark</title>',
    `  <updated>${new Date(newest).toISOString()}</updated>`,
    '  <author><name>Witness Mark</name></author>',
    `  <link rel="alternate" type="text/html" href="${escape(page)}"/>`,
    `  <link rel="self" type="application/atom+xml" href="${escape(`${home}editions.xml`)}"/>`,
    ...editions.map((edition) => entry(edition, changed(edition), page)),
    '</feed>',
    '',
  ].join('\n')
}
