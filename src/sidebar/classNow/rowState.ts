import type { TeamView } from '../../desk/views.ts';
import { texts } from '../texts.ts';

export type RowStateName = keyof typeof texts.states;
export interface RowState {
  readonly name: RowStateName;
  readonly sign: string;
  readonly word: string;
}

const checkWords: readonly RowStateName[] = [
  'on target',
  'close',
  'follows',
  'not yet',
  'unreadable',
  'blank',
  'kept',
  'next time',
];

/** Sign and word for a row. A check that the host has not worked out yet, or whose run failed, is never counted as wrong. */
export function rowState({ check, entry }: Pick<TeamView['steps'][number], 'check' | 'entry'>): RowState {
  const word = check.trim();
  const named = checkWords.find((name) => name === word);
  const name = named ?? (word !== '' ? 'unknown' : entry.trim() === '' ? 'blank' : 'told');
  const { sign, word: shown } = texts.states[name];
  return { name, sign, word: shown };
}
