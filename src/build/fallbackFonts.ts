/* Writes src/styles/fallback-fonts.css: fonts of the reader's own machine, fitted to the text font's widths and heights, so that next to nothing moves
   when it comes late. `npm run fallback-fonts`; run it again when the text font changes. The figures are computed from the font files themselves by
   capsize: Arimo has the widths of Arial and of Liberation Sans, to which it is metric-compatible by design. */
import { writeFile } from 'node:fs/promises'
import { createFontStack } from '@capsizecss/core'
import { fromFile } from '@capsizecss/unpack/fs'
import { format, resolveConfig } from 'prettier'

const WEIGHTS = [400, 700] as const
const TEXT = 'atkinson-hyperlegible-next'

/** The fonts that systems bring: the package whose files have their metrics, and their names by weight. */
const SYSTEMS = [
  {
    family: 'Fitted Arial',
    metricsOf: 'arimo',
    names: {
      400: ['Arial', 'Liberation Sans', 'Arimo Regular', 'Arimo'],
      700: ['Arial Bold', 'Liberation Sans Bold', 'Arimo Bold'],
    },
  },
  {
    family: 'Fitted Roboto',
    metricsOf: 'roboto',
    names: { 400: ['Roboto', 'Roboto Regular'], 700: ['Roboto Bold'] },
  },
  {
    family: 'Fitted Open Sans',
    metricsOf: 'open-sans',
    names: { 400: ['Open Sans', 'Open Sans Regular'], 700: ['Open Sans Bold'] },
  },
  {
    family: 'Fitted DejaVu Sans',
    metricsOf: 'dejavu-sans',
    names: { 400: ['DejaVu Sans'], 700: ['DejaVu Sans Bold'] },
  },
] as const

const fileOf = (font: string, weight: number): string =>
  new URL(
    `../../node_modules/@fontsource/${font}/files/${font}-latin-${weight}-normal.woff2`,
    import.meta.url,
  ).pathname

async function face(
  { family, metricsOf, names }: (typeof SYSTEMS)[number],
  weight: (typeof WEIGHTS)[number],
): Promise<string> {
  const [text, system] = [
    await fromFile(fileOf(TEXT, weight)),
    await fromFile(fileOf(metricsOf, weight)),
  ]
  const { fontFaces } = createFontStack([text, system], { fontFaceFormat: 'styleObject' })
  const fitted = fontFaces[0]!['@font-face']
  return `@font-face {
    font-family: '${family}';
    src: ${names[weight].map((name) => `local('${name}')`).join(', ')};
    font-weight: ${weight};
    size-adjust: ${fitted.sizeAdjust};
    ascent-override: ${fitted.ascentOverride};
    descent-override: ${fitted.descentOverride};
    line-gap-override: ${fitted.lineGapOverride ?? '0%'};
  }`
}

if (import.meta.main) {
  const file = new URL('../styles/fallback-fonts.css', import.meta.url)
  const faces = await Promise.all(
    SYSTEMS.flatMap((system) => WEIGHTS.map((weight) => face(system, weight))),
  )
  const css = `/* Written by src/build/fallbackFonts.ts (npm run fallback-fonts). */\n${faces.join('\n')}\n`
  await writeFile(file, await format(css, { ...(await resolveConfig(file)), parser: 'css' }))
}
