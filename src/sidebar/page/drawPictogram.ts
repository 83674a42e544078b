import { svgElement } from './svgElement.ts';

/*
 * The symbols of UN GHS, Annex 1 (29 CFR 1910.1200 Appendix C has the same): black on white in a red square set on its
 * point. The standard says what each shows; these drawings are our own and as plain as print at 15 mm allows. The middle
 * of the square is 0, 0; its corners are 48 away.
 */
type Mark =
  | { readonly path: string; readonly white?: true; readonly turn?: number }
  | { readonly line: string; readonly width: number; readonly white?: true }
  | { readonly dot: readonly [number, number, number]; readonly white?: true };

const flame =
  'M2 -30 C8 -18 17 -12 17 1 C17 12 10 18 0 18 C-10 18 -17 12 -17 2 C-17 -6 -12 -10 -10 -17 C-7 -14 -6 -11 -5 -8 C0 -13 3 -21 2 -30 Z';
const innerFlame =
  'M1 -4 C4 2 8 4 8 9 C8 14 4 16 0 16 C-4 16 -8 14 -8 9 C-8 5 -5 4 -4 0 C-2 2 -2 3 -1 5 C1 2 2 0 1 -4 Z';
const ground: Mark = { path: 'M-18 21 H18 V25 H-18 Z' };

const symbols: Readonly<Record<string, readonly Mark[]>> = {
  GHS01: [
    { dot: [-6, 10, 13] },
    { line: 'M3 -1 L8 -8', width: 5 },
    { path: 'M9 -29 L12 -18 L20 -22 L16 -13 L26 -9 L17 -6 L20 5 L11 -2 L4 6 L4 -5 L-7 -7 L3 -13 L-3 -23 L7 -18 Z' },
    { path: 'M15 12 L20 9 L19 15 Z' },
    { path: 'M9 22 L15 21 L11 27 Z' },
    { path: 'M-22 -6 L-16 -9 L-18 -2 Z' },
  ],
  GHS02: [{ path: flame }, { path: innerFlame, white: true }, ground],
  GHS03: [
    { dot: [0, 11, 12] },
    { dot: [0, 11, 7], white: true },
    {
      path: 'M1 -33 C6 -24 13 -19 13 -9 C13 -4 10 -1 6 0 C8 -6 4 -9 3 -14 C1 -10 -3 -8 -4 0 C-10 -1 -13 -5 -13 -10 C-13 -17 -8 -19 -7 -25 C-4 -23 -4 -20 -3 -17 C0 -21 2 -26 1 -33 Z',
    },
    { path: 'M-15 26 H15 V30 H-15 Z' },
  ],
  GHS04: [{ path: 'M-23 -7 H14 C18 -7 19 -3 22 -3 H28 V3 H22 C19 3 18 7 14 7 H-23 C-26 7 -26 -7 -23 -7 Z', turn: -35 }],
  GHS05: [
    { path: 'M-27 -9 L-6 -21 L-4 -16 L-24 -5 Z' },
    { path: 'M27 -9 L6 -21 L4 -16 L24 -5 Z' },
    { line: 'M-8 -11 V-6 M-8 -2 V2', width: 3 },
    { line: 'M8 -11 V-6 M8 -2 V2', width: 3 },
    { path: 'M-29 8 H-14 L-11 12 H-6 L-3 8 H0 V15 H-25 Z' },
    { path: 'M3 10 C5 7 8 12 11 12 C13 12 12 7 16 7 C22 7 27 8 29 10 C26 14 22 18 17 18 H6 C3 18 2 13 3 10 Z' },
    { path: 'M-20 20 H20 V24 H-20 Z' },
  ],
  GHS06: [
    { line: 'M-17 7 L17 21 M17 7 L-17 21', width: 4.5 },
    ...[-1, 1].flatMap((side): readonly Mark[] => [
      { dot: [side * 18.5, 4.5, 3.3] },
      { dot: [side * 19.5, 9.5, 3.3] },
      { dot: [side * 18.5, 19, 3.3] },
      { dot: [side * 16, 24, 3.3] },
    ]),
    {
      path: 'M0 -34 C10 -34 17 -28 17 -18 C17 -12 14 -9 9 -7 V2 H-9 V-7 C-14 -9 -17 -12 -17 -18 C-17 -28 -10 -34 0 -34 Z',
    },
    { dot: [-6.5, -18, 4.4], white: true },
    { dot: [6.5, -18, 4.4], white: true },
    { path: 'M0 -13 L3 -7.5 H-3 Z', white: true },
    { line: 'M-4 -4 V1.5 M0 -4 V1.5 M4 -4 V1.5', width: 1.6, white: true },
  ],
  GHS07: [{ path: 'M-6 -30 C-6 -34 6 -34 6 -30 L3 8 H-3 Z' }, { dot: [0, 19, 6] }],
  GHS08: [
    { dot: [0, -23, 8.5] },
    { path: 'M-5 -14 H5 C14 -12 22 -4 24 8 L19 14 V21 H-19 V14 L-24 8 C-22 -4 -14 -12 -5 -14 Z' },
    { path: 'M0 -12 L3 -1 L13 -5 L6 3 L14 9 L4 8 L2 19 L-2 8 L-13 10 L-5 3 L-11 -6 L-2 -1 Z', white: true },
  ],
  GHS09: [
    {
      path: 'M-20 16 C-17 8 -17 -2 -18 -8 L-25 -14 L-23 -16 L-17 -12 L-18 -24 L-15 -24 L-13 -12 L-6 -20 L-4 -18 L-12 -6 C-12 2 -11 10 -9 16 Z',
    },
    { line: 'M-24 16 H-2', width: 3 },
    { path: 'M-4 12 C4 2 16 2 21 9 L29 4 L27 18 L20 14 C13 20 3 19 -4 12 Z' },
    { dot: [3, 10.5, 1.8], white: true },
    { line: 'M-12 24 H14', width: 3 },
  ],
};

const drawMark = (mark: Mark): SVGElement => {
  const paint = mark.white ? 'paper' : 'ink';
  if ('dot' in mark) {
    const [cx, cy, r] = mark.dot;
    return svgElement('circle', { class: paint, cx, cy, r });
  }
  if ('line' in mark) return svgElement('path', { class: `${paint} line`, d: mark.line, 'stroke-width': mark.width });
  const { path, turn } = mark;
  return svgElement('path', { class: paint, d: path, ...(turn === undefined ? {} : { transform: `rotate(${turn})` }) });
};

/** One pictogram. It says nothing to a screen reader: its name stands beside it as text. */
export const drawPictogram = (code: string): SVGSVGElement =>
  svgElement(
    'svg',
    { class: 'pictogram', viewBox: '-50 -50 100 100', 'aria-hidden': 'true', focusable: 'false' },
    svgElement('path', { class: 'frame', d: 'M0 -46 L46 0 L0 46 L-46 0 Z' }),
    ...(symbols[code] ?? []).map(drawMark),
  );
