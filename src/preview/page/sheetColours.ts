/** Colours of a cell as the workbook has them. */
export interface CellColours {
  readonly background?: string | undefined;
  readonly color?: string | undefined;
}
type Rgb = readonly [number, number, number];

function readColour(text: string | undefined): Rgb | undefined {
  const hex = /^#([0-9a-f]{3}|[0-9a-f]{6})$/i.exec(text?.trim() ?? '')?.[1];
  if (!hex) return undefined;
  const long = hex.length === 3 ? [...hex].map((digit) => digit + digit).join('') : hex;
  const part = (from: number): number => Number.parseInt(long.slice(from, from + 2), 16) / 255;
  return [part(0), part(2), part(4)];
}
const writeColour = (colour: Rgb): string =>
  `#${colour
    .map((part) =>
      Math.round(Math.min(1, Math.max(0, part)) * 255)
        .toString(16)
        .padStart(2, '0'),
    )
    .join('')}`;

const linear = (part: number): number => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4);
/** Relative luminance, WCAG 2.2. */
const luminance = ([red, green, blue]: Rgb): number =>
  0.2126 * linear(red) + 0.7152 * linear(green) + 0.0722 * linear(blue);
const contrastBetween = (one: Rgb, other: Rgb): number => {
  const [light, dark] = [luminance(one), luminance(other)].sort((a, b) => b - a) as [number, number];
  return (light + 0.05) / (dark + 0.05);
};
/** Contrast ratio of two colours written as #rrggbb, WCAG 2.2; undefined where one cannot be read. */
export function contrast(one: string, other: string): number | undefined {
  const [first, second] = [readColour(one), readColour(other)];
  return first && second && contrastBetween(first, second);
}

/** The same hue with lightness turned over: a pale tint becomes a deep one, ink becomes chalk. */
function turned([red, green, blue]: Rgb, range: { readonly darkest: number; readonly lightest: number }): Rgb {
  const most = Math.max(red, green, blue);
  const least = Math.min(red, green, blue);
  const lightness = (most + least) / 2;
  const spread = most - least;
  const saturation = spread === 0 ? 0 : spread / (1 - Math.abs(2 * lightness - 1));
  const sector =
    spread === 0
      ? 0
      : most === red
        ? ((green - blue) / spread + 6) % 6
        : most === green
          ? (blue - red) / spread + 2
          : (red - green) / spread + 4;
  const wanted = range.darkest + (1 - lightness) * (range.lightest - range.darkest);
  const chroma = (1 - Math.abs(2 * wanted - 1)) * Math.min(saturation, 0.65);
  const second = chroma * (1 - Math.abs((sector % 2) - 1));
  const base = wanted - chroma / 2;
  const [r, g, b] = (
    [
      [chroma, second, 0],
      [second, chroma, 0],
      [0, chroma, second],
      [0, second, chroma],
      [second, 0, chroma],
      [chroma, 0, second],
    ] as const
  )[Math.floor(sector) % 6] ?? [0, 0, 0];
  return [r + base, g + base, b + base];
}

const chalk: Rgb = [0.91, 0.93, 0.95];
const ink: Rgb = [0.09, 0.13, 0.17];
const darkPaper: Rgb = [0.078, 0.106, 0.129];

/**
 * Colours to show a cell in. Where the reader's system is light they are the workbook's own; where it is dark they are
 * turned over and moved apart until text reaches 4.5 : 1, since a workbook holds one set of colours only.
 */
export function coloursShown({ background, color }: CellColours, scheme: 'light' | 'dark'): CellColours {
  // White is the paper of a workbook, so it is the page's own paper that shows it.
  const under = /^#f{3}(f{3})?$/i.test(background ?? '') ? undefined : readColour(background);
  const over = readColour(color);
  if (scheme === 'light') {
    // The page's own ink may not show on a dark background that says nothing about its text.
    if (!under || over) return { background, color };
    return { background, color: contrastBetween(ink, under) >= 4.5 ? undefined : writeColour([1, 1, 1]) };
  }
  const paper = under && turned(under, { darkest: 0.1, lightest: 0.8 });
  const ground = paper ?? darkPaper;
  let text = over ? turned(over, { darkest: 0.25, lightest: 0.97 }) : undefined;
  if (!text) {
    if (!paper) return {};
    text = contrastBetween(chalk, ground) >= contrastBetween(ink, ground) ? chalk : ink;
  }
  const goal: Rgb = luminance(ground) < 0.18 ? [1, 1, 1] : [0, 0, 0];
  // A little above the goal, since rounding to whole steps of colour may take some of it back.
  for (let step = 0; step < 60 && contrastBetween(text, ground) < 4.55; step += 1) {
    text = text.map((part, index) => part + ((goal[index] ?? 0) - part) * 0.15) as unknown as Rgb;
  }
  return { background: paper && writeColour(paper), color: writeColour(text) };
}
