import type { GivenCells } from '../lesson/givenCells.ts';

/** The block's own key, where its check is handed one among the givens; it mixes the letters of the team, and no more. */
export const blockKey = (givens: GivenCells): string => String(givens.key ?? '').trim();
