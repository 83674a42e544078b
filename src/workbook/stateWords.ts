import { closedRow } from '../lab/texts/feedback.ts';
import type { StateName } from './workbook.ts';

/** The words that checks give, each with the state whose tint it gets. */
export const stateWords: readonly { readonly word: string; readonly state: StateName }[] = [
  { word: 'on target', state: 'on target' },
  { word: 'close', state: 'close' },
  { word: 'follows', state: 'follows' },
  { word: 'not yet', state: 'not yet' },
  { word: 'unreadable', state: 'unreadable' },
  { word: 'blank', state: 'blank' },
  { word: 'kept', state: 'blank' },
  { word: closedRow.check, state: 'blank' },
];
