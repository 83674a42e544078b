import { pollTexts } from '../texts/poll.ts';
import type { PollAnswer } from './pollAnswer.ts';

export interface StatementCounts {
  readonly statement: string;
  /** How many chose each word of the scale, from most to least. */
  readonly counts: readonly number[];
  /** Marks in other words than those of the scale. */
  readonly other: number;
  /** How many marked it with a word of the scale, and how many of those agree fully or mostly. */
  readonly marked: number;
  readonly agree: number;
}

export interface PollSummary {
  readonly answers: number;
  readonly fromStudents: number;
  readonly fromTeams: number;
  readonly statements: readonly StatementCounts[];
  /** As people wrote them, in the order of the rows. */
  readonly openLines: readonly string[];
}

const same = (one: string, other: string): boolean => one.toLowerCase() === other.toLowerCase();
/** Words of the scale that count as agreeing. */
const agreeing = 2;

/** Counts of some answers, by statement and by word. */
export function pollSummary(answers: readonly PollAnswer[]): PollSummary {
  const { statements, scale, from } = pollTexts;
  const given = (words: string) => answers.filter((answer) => same(answer.from, words)).length;
  return {
    answers: answers.length,
    fromStudents: given(from.student),
    fromTeams: given(from.team),
    statements: statements.map((statement, place) => {
      const marks = answers.map((answer) => answer.marks[place] ?? '').filter((mark) => mark !== '');
      const counts = scale.map((word) => marks.filter((mark) => same(mark, word)).length);
      const marked = counts.reduce((sum, count) => sum + count, 0);
      const agree = counts.slice(0, agreeing).reduce((sum, count) => sum + count, 0);
      return { statement, counts, other: marks.length - marked, marked, agree };
    }),
    openLines: answers.map(({ openLine }) => openLine).filter((line) => line !== ''),
  };
}

export interface PollChoice {
  /** Empty for all classes. */
  readonly className: string;
  readonly day: string;
}

/** Answers of one day and one class, or of all classes. */
export const answersOf = (answers: readonly PollAnswer[], { className, day }: PollChoice): readonly PollAnswer[] =>
  answers.filter((answer) => answer.day === day && (className === '' || answer.className === className));

/** Days that a class has answers from, the latest first; a row without a day comes last. */
export function pollDays(answers: readonly PollAnswer[], className: string): readonly string[] {
  const days = answers.filter((answer) => className === '' || answer.className === className).map(({ day }) => day);
  return [...new Set(days)].sort((one, other) => (one < other ? 1 : one > other ? -1 : 0));
}

/** The day with answers before this one; undefined where there is none. */
export const dayBefore = (answers: readonly PollAnswer[], { className, day }: PollChoice): string | undefined =>
  day === '' ? undefined : pollDays(answers, className).find((other) => other !== '' && other < day);

export type ChangeWord = 'more' | 'fewer' | 'alike' | 'unknown';

/** A share that moved by less than this says nothing about a class (common practice, no source). */
const noticeable = 0.1;

/** How agreement with each statement moved from one summary to another. */
export const pollChange = (now: PollSummary, before: PollSummary): readonly ChangeWord[] =>
  now.statements.map((statement, place): ChangeWord => {
    const earlier = before.statements[place];
    if (earlier === undefined || statement.marked === 0 || earlier.marked === 0) return 'unknown';
    const moved = statement.agree / statement.marked - earlier.agree / earlier.marked;
    if (Math.abs(moved) < noticeable - 1e-9) return 'alike';
    return moved > 0 ? 'more' : 'fewer';
  });

/** A summary in one line of plain words and counts, for the day's record; empty where nobody answered. */
export function pollLine({ answers, statements }: PollSummary): string {
  const marked = statements.filter((statement) => statement.marked > 0);
  const share = ({ agree, marked: of }: StatementCounts) => agree / of;
  const ordered = [...marked].sort((one, other) => share(other) - share(one));
  const [best] = ordered;
  const least = ordered[ordered.length - 1];
  if (best === undefined || least === undefined) return '';
  return share(best) === share(least)
    ? pollTexts.lineAlike({ answers, each: best })
    : pollTexts.line({ answers, best, least });
}
