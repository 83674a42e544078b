/**
 * Widths of letters in hundredths of the size: of each the wider one of Inter at 13 px, with digits of one width, and of a face
 * with the metrics of Arial. Bold is wider by less than a tenth.
 */
const widths: readonly (readonly [hundredths: number, letters: string])[] = [
  [25, 'ijl'],
  [28, '’ ,.:;I'],
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

let byLetter: ReadonlyMap<string, number> | undefined;

function widthOf(text: string): number {
  byLetter ??= new Map(widths.flatMap(([wide, letters]) => [...letters].map((letter) => [letter, wide] as const)));
  let hundredths = 0;
  for (const letter of text) hundredths += byLetter.get(letter) ?? widest;
  return hundredths / 100;
}

/**
 * Lines that a text takes where it wraps; never fewer than a browser makes of it.
 *
 * @param room - How wide a line is, in sizes of its letters.
 */
export function wrappedLines(text: string, room: number): number {
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
