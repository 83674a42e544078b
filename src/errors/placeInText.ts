/** Longest text that is shown whole, and how much is shown before and behind the place in a longer one. */
const shownWhole = 30;
const shownBefore = 10;
const shownBehind = 14;

/** A place in a text in words, with the text around it. */
export function placeInText({ text, from }: { readonly text: string; readonly from: number }): string {
  const [start, end] = [Math.max(0, from - shownBefore), from + shownBehind];
  const around =
    text.length <= shownWhole
      ? text
      : `${start > 0 ? '…' : ''}${text.slice(start, end)}${end < text.length ? '…' : ''}`;
  return `character ${from + 1} of “${around}”`;
}
