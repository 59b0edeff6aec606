import { getCollection } from 'astro:content'
import type { CollectionEntry } from 'astro:content'
import { isCalculatorId, loadCalculator } from '../calculators/index.ts'
import { path } from '../site.ts'
import { loadProcedures } from './procedures.ts'

export type Symptom = CollectionEntry<'symptoms'>
export type Cause = Symptom['data']['causes'][number]

/** When a symptom is felt, as a heading. */
export const WHEN = {
  braking: 'Braking',
  turning: 'In turns',
  bumps: 'Over bumps',
  straight: 'Riding straight on',
  standing: 'Standing still, or measuring',
  'after-work': 'After work on the bike',
} as const

const END = ['front', 'both', 'rear']

/** The symptoms by when they are felt, the front's first. */
export async function symptomGroups(): Promise<{ when: string; name: string; found: Symptom[] }[]> {
  const symptoms = await getCollection('symptoms')
  return Object.entries(WHEN).map(([when, name]) => ({
    when,
    name,
    found: symptoms
      .filter(({ data }) => data.when === when)
      .sort((a, b) => END.indexOf(a.data.end) - END.indexOf(b.data.end)),
  }))
}

/** A link that says what kind of page it leads to. */
export interface KindLink {
  href: string
  text: string
}

/** Where a cause is measured, computed and explained; the procedure's link leads to the step that tests it. */
export async function linksOf(
  of: Pick<Cause, 'procedure' | 'step' | 'calculator' | 'chapter'>,
): Promise<KindLink[]> {
  const procedures = new Map((await loadProcedures()).map(({ id, data }) => [id, data.title]))
  const chapters = new Map(
    (await getCollection('chapters')).map(({ id, data }): [string, string] => [id, data.name]),
  )
  const { procedure, step, calculator, chapter } = of
  const links: KindLink[] = []
  if (procedure && procedures.has(procedure))
    links.push({
      href: path(`procedures/${procedure}/${step ? `#${step}` : ''}`),
      text: `Do: ${procedures.get(procedure)!}`,
    })
  if (calculator && isCalculatorId(calculator))
    links.push({
      href: path(`calculators/${calculator}/`),
      text: `Calculator: ${loadCalculator(calculator).title}`,
    })
  if (chapter && chapters.has(chapter))
    links.push({ href: path(`chapters/${chapter}/`), text: `Chapter: ${chapters.get(chapter)!}` })
  return links
}
