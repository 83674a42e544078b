import type { TeamView } from '../../desk/views.ts';
import { texts } from '../texts.ts';

/** Who works on the row, how often it was tried and how much help was taken, in one quiet line. */
export const stepNotes = ({ who = '', tries, helpWanted = 0 }: TeamView['steps'][number]): string =>
  [who.trim(), texts.classNow.tries(tries), helpWanted > 0 ? texts.classNow.helpTaken(helpWanted) : '']
    .filter((part) => part !== '')
    .join(' · ');
