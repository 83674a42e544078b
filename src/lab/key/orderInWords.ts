import { procedureByName } from '../bench/procedures.ts';
import type { GivenCells } from '../lesson/givenCells.ts';
import { keyTexts } from '../texts/key.ts';

/** An order that works for every team, said once in words, since each team may have letters of its own. */
export const orderInWords = (procedure: string, givens: GivenCells): string =>
  keyTexts.inWords(
    procedureByName(procedure).actions.map(({ text }) =>
      text.map((piece) => (typeof piece === 'string' ? piece : String(givens[piece.given] ?? ''))).join(''),
    ),
  );
