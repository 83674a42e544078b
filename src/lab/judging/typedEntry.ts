import { leadingPlace, tenTo } from './span.ts';
import type { Asked } from './tolerance.ts';

/** An entry as read: its value in the unit asked, and how exactly it was typed. */
export interface TypedEntry {
  readonly value: number;
  /** Significant figures as typed, without the trailing zeros of a whole number, and with them. */
  readonly figuresMin: number;
  readonly figuresMax: number;
  /** Place of the last digit typed, in the unit asked. */
  readonly lastPlace: number;
  /** Typed as text, so that trailing zeros were kept. */
  readonly isText: boolean;
}

/**
 * Unit of the last figure, where an entry with fewer figures than asked is read as if zeros followed, and the trailing
 * zeros of a whole number count as far as the figures asked.
 */
export function lastFigureFilledUp({ value, figuresMin }: TypedEntry, asked: Asked): number {
  const sure = leadingPlace(value) - figuresMin + 1;
  const wanted = 'decimals' in asked ? -asked.decimals : leadingPlace(value) - asked.figures + 1;
  return tenTo(Math.min(sure, wanted));
}

/** Whether an entry has fewer figures than asked, but at least two. */
export function isShort({ figuresMax, lastPlace }: TypedEntry, asked: Asked): boolean {
  if (figuresMax < 2) return false;
  return 'decimals' in asked ? lastPlace > -asked.decimals : figuresMax < asked.figures;
}

/** Whether an entry has the figures asked; a whole number's trailing zeros are read in the student's favour. */
export function hasFiguresAsked(entry: TypedEntry, asked: Asked): boolean {
  if ('decimals' in asked) return entry.lastPlace === -asked.decimals;
  return entry.figuresMin <= asked.figures && asked.figures <= entry.figuresMax;
}
