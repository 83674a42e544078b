import type { LookName, StateName } from './workbook.ts';

/** Colours stand here once. Each text on its own ground reaches 4.5 : 1. */
const ink = '#17212b';
const soft = '#51606f';
/** For marks that the script reads and people need not. */
const pale = '#6b7885';
const paper = '#ffffff';
const bench = '#f3f6f8';
const glass = '#0b5c6b';
const glassSoft = '#ddf1f3';
const entryGround = '#eef8f9';
/** All but the places to type in of a class sheet: paler than a heading. */
const still = '#f7f9fa';

export interface Look {
  readonly color: string;
  readonly background: string;
  readonly bold: boolean;
  readonly size: number;
  readonly wrap: boolean;
  /** Cut at the edge of its cell where it does not wrap, rather than run over empty cells beside it. */
  readonly clip?: boolean;
  readonly align: 'left' | 'center' | 'right';
  /** A line around each cell: a place to type in. */
  readonly border?: string;
}

const plain: Look = { color: ink, background: paper, bold: false, size: 10, wrap: false, align: 'left' };

export const plainLook = plain;

export const looks: Readonly<Record<LookName, Look>> = {
  title: { ...plain, bold: true, size: 14 },
  note: { ...plain, color: soft, size: 10 },
  heading: { ...plain, color: soft, background: bench, bold: true, size: 9, wrap: true },
  'team heading': { ...plain, background: bench, bold: true, size: 12, wrap: true },
  question: { ...plain, size: 11, wrap: true },
  helper: { ...plain, background: entryGround, wrap: true },
  quiet: { ...plain, color: soft, size: 8 },
  caution: { ...plain, color: '#744400', background: '#fbebd2', size: 9 },
  'class name': { ...plain, bold: true, wrap: true },
  lesson: { ...plain, bold: true, size: 12 },
  step: { ...plain, background: still, bold: true, wrap: true },
  task: { ...plain, background: still, wrap: true },
  letters: { ...plain, background: still, size: 9, wrap: true },
  unit: { ...plain, background: still, size: 9, wrap: true },
  entry: { ...plain, size: 11, wrap: true, border: glass },
  choice: { ...plain, size: 9, wrap: true, border: glass },
  'caution text': { ...plain, color: '#744400', background: '#fbebd2', size: 9, wrap: true },
  mark: { ...plain, color: pale, size: 6, clip: true },
  spilled: { ...plain, background: still, size: 9, wrap: true },
  'text heading': { ...plain, color: soft, background: bench, size: 9, wrap: true },
  text: { ...plain, color: soft, size: 9, wrap: true },
  count: { ...plain, color: soft, background: still, size: 8 },
  'setting name': { ...plain, bold: true },
  'setting value': { ...plain, background: entryGround },
  link: { ...plain, color: glass },
  progress: { ...plain, align: 'center', wrap: true },
  closing: { ...plain, color: soft, background: bench, size: 9 },
};

/** Tints of the states. The word stays in the cell, so that no state depends on colour. */
export const stateLooks: Readonly<Record<StateName, { readonly color: string; readonly background: string }>> = {
  'on target': { color: '#0b5c6b', background: glassSoft },
  close: { color: '#56398f', background: '#ece6f8' },
  follows: { color: '#3f4a5a', background: '#e5eaf0' },
  'not yet': { color: '#744400', background: '#fbebd2' },
  unreadable: { color: '#851c58', background: '#f9e3ef' },
  blank: { color: '#5d6b78', background: still },
};

export const tabColors = {
  plan: '#51606f',
  class: glass,
  progress: '#56398f',
  help: '#744400',
  prepare: '#3f4a5a',
  record: '#851c58',
  poll: '#3f4a5a',
  key: '#3f4a5a',
  kept: '#a5b3c0',
} as const;
