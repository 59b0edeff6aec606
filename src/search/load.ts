import { base } from '../base.ts'
import { editionMark, ofThisEdition } from '../offline/edition.ts'
import { find } from './find.ts'
import type { Found, TextIndex } from './find.ts'
import { prepareLexicon } from './lexicon.ts'
import type { Kind, Lexicon, LexiconFile } from './lexicon.ts'

interface Ready {
  index: TextIndex
  lexicon: Lexicon
}

interface IndexModule extends TextIndex {
  options: (options: {
    noWorker: boolean
    excerptLength: number
    metaCacheTag: string
  }) => Promise<void>
  init: () => Promise<void>
}

async function loadIndex(): Promise<TextIndex> {
  const address = ofThisEdition(`${base}pagefind/pagefind.js`)
  const module: IndexModule = await import(/* @vite-ignore */ address)
  // in a worker it would load its whole script a second time; excerpts are cut here, so that none is wanted from it
  await module.options({ noWorker: true, excerptLength: 1, metaCacheTag: editionMark() })
  await module.init()
  return module
}

async function loadLexicon(): Promise<Lexicon> {
  const response = await fetch(ofThisEdition(`${base}search/vocabulary.json`))
  if (!response.ok) throw new Error(`the search vocabulary did not load (${response.status})`)
  const file: LexiconFile = await response.json()
  return prepareLexicon(file)
}

let ready: Promise<Ready> | undefined

/** Loads the index and the vocabulary, once; a failure is forgotten, so that the next call tries again. */
export function loadSearch(): Promise<Ready> {
  ready ??= Promise.all([loadIndex(), loadLexicon()]).then(([index, lexicon]) => ({
    index,
    lexicon,
  }))
  ready.catch(() => (ready = undefined))
  return ready
}

/** Searches the whole site. */
export async function searchSite(text: string, kinds: ReadonlySet<Kind>): Promise<Found> {
  const { index, lexicon } = await loadSearch()
  return find(text, index, lexicon, kinds)
}
