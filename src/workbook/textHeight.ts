import { wrappedLines } from '../lab/texts/wrappedLines.ts';

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

const boldShare = 1.07;

/** Pixels that a letter size of 10 takes on the screen, and lines of it, as the preview draws them; the host needs less. */
const pixelsOf = (size: number): number => Math.max(10, Math.round((size / 10) * 14));

/** Lines that a text takes where it wraps at its column's edge. */
const linesOf = (text: string, { width, size, bold = false }: Setting): number =>
  wrappedLines(text, (width - around.across) / (pixelsOf(size) * (bold ? boldShare : 1)));

/** Height of a row that shows all of a text, in whole pixels. */
export const heightOf = (text: string, setting: Setting): number =>
  text === '' ? 0 : linesOf(text, setting) * Math.round(pixelsOf(setting.size) * 1.42) + around.down;
