declare module 'subset-font' {
  /** Cuts a font to the characters of a text. */
  export default function subsetFont(
    font: Uint8Array,
    text: string,
    options: { targetFormat: 'woff2' },
  ): Promise<Uint8Array>
}
