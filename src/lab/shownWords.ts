import type { Shown, Step } from './activity.ts';

/** The line under a step's title with the team's own values in it, as the class sheet shows it. */
export const shownWords = ({ shown }: Pick<Step, 'shown'>, givens: Readonly<Record<string, string>>): string =>
  shown.map((piece) => pieceWords(piece, givens)).join('');

function pieceWords(piece: Shown, givens: Readonly<Record<string, string>>): string {
  if (typeof piece === 'string') return piece;
  const value = (givens[piece.given] ?? '').trim();
  return value === '' ? '' : `${piece.before ?? ''}${value}${piece.after ?? ''}`;
}
