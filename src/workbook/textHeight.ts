/** How text of a size is set in a cell: letters, lines and the room around them, in pixels. */
interface Setting {
  /** Column's width. */
  readonly width: number;
  /** Size in points, as a look has it. */
  readonly size: number;
  readonly bold?: boolean;
}

/** Left and right of a text, and above and below it, lines between cells included. */
const around = { across: 13, down: 9 } as const;

/**
 * Widths of letters in hundredths of the size: of each the wider one of Inter at 13 px, with digits of one width, and of a face
 * with the metrics of Arial. Bold is wider by less than a tenth.
 */
const widths: readonly (readonly [hundredths: number, letters: string])[] = [
  [25, 'ijl'],
  [28, '’ \u00a0,.:;I'],
  [30, "!·'"],
  [34, 't`f|'],
  [40, '()[]r{}/'],
  [45, '“”₂₃₄²⁺⁻"°'],
  [53, 's^'],
  [55, 'kx'],
  [57, '?_z–Lavy'],
  [58, 'Jc'],
  [59, 'e'],
  [60, 'hnou'],
  [62, 'Fbdgpqρ'],
  [65, '#Z$*+-0123456789<=>T~×÷−≈'],
  [67, '&BEPS'],
  [71, 'KYXΔAV'],
  [75, 'DRCHU'],
  [78, 'NGOQ'],
  [82, 'w'],
  [91, 'mM'],
];
/** Of any other sign. */
const widest = 102;
const boldShare = 1.07;

/** Pixels that a letter size of 10 takes on the screen, and lines of it, as the preview draws them; the host needs less. */
const pixelsOf = (size: number): number => Math.max(10, Math.round((size / 10) * 14));

let byLetter: ReadonlyMap<string, number> | undefined;

/** The same words stand in the rows of every team. */
const known = new Map<string, number>();

function widthOf(word: string): number {
  const found = known.get(word);
  if (found !== undefined) return found;
  const width = measured(word);
  known.set(word, width);
  return width;
}

function measured(text: string): number {
  byLetter ??= new Map(widths.flatMap(([wide, letters]) => [...letters].map((letter) => [letter, wide] as const)));
  let hundredths = 0;
  for (const letter of text) hundredths += byLetter.get(letter) ?? widest;
  return hundredths / 100;
}

/** Lines that a text takes where it wraps at its column's edge; never fewer than a browser makes of it. */
function linesOf(text: string, { width, size, bold = false }: Setting): number {
  const room = (width - around.across) / (pixelsOf(size) * (bold ? boldShare : 1));
  let lines = 0;
  for (const paragraph of text.split('\n')) {
    let used = 0;
    lines += 1;
    for (const word of paragraph.split(' ')) {
      const own = widthOf(word);
      if (used > 0 && used + widthOf(' ') + own > room) {
        lines += 1;
        used = 0;
      }
      used += (used === 0 ? 0 : widthOf(' ')) + own;
      // A word that is wider than its column is broken.
      while (used > room) {
        lines += 1;
        used -= room;
      }
    }
  }
  return lines;
}

/** Height of a row that shows all of a text, in whole pixels. */
export const heightOf = (text: string, setting: Setting): number =>
  text === '' ? 0 : linesOf(text, setting) * Math.round(pixelsOf(setting.size) * 1.42) + around.down;
