/** Lettering in units of the drawing at phone width. */
export const LETTER = 15.3

/** Widths of the site's face in shares of its size: figures are tabular and wide, points and thin letters narrow. */
const widthOf = (character: string): number =>
  /[0-9−+±]/.test(character)
    ? 0.65
    : /[.,:;’ ijlt1|]/.test(character)
      ? 0.3
      : /[mwMW]/.test(character)
        ? 0.85
        : 0.56

/** Width that a text takes, estimated: the drawing is made without measuring. */
export const textWidth = (text: string): number =>
  LETTER * [...text].reduce((sum, character) => sum + widthOf(character), 0)
