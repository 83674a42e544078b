import { exitCount } from '../texts/exitShown.ts';
import { remarks } from '../texts/feedback.ts';
import { recordWords } from '../texts/record.ts';
import type { RecordEntry } from './recordEntry.ts';

/** One team's rows at the moment of writing. */
export interface TeamDay {
  readonly team: string;
  /** Marked absent in the Plan. */
  readonly absent: boolean;
  /** Names of people of the team who are absent that day, while the others are here. */
  readonly absentMembers: readonly string[];
  /** Something was entered that day. */
  readonly here: boolean;
  readonly steps: readonly StepDay[];
}

export interface StepDay {
  readonly title: string;
  /** False for rows that are only told and never scored. */
  readonly scored: boolean;
  readonly check: string;
  readonly entry: string;
  readonly lookAt: string;
  /** At least so many; 0 where none was counted. */
  readonly tries: number;
}

export interface ClassDay {
  readonly day: string;
  readonly className: string;
  readonly activity: string;
  readonly aim: string;
  readonly teams: readonly TeamDay[];
  /** The poll in one line, or empty where there was none. */
  readonly poll: string;
  /** Answers to exit questions; left out where the lesson has none. */
  readonly exit?: { readonly answered: number; readonly right: number };
}

export interface ClassFacts {
  /** The entry as the sheet tells it, without any name of a team. */
  readonly entry: RecordEntry;
  /** For the copied text only. */
  readonly names: {
    readonly present: readonly string[];
    readonly absent: readonly string[];
    readonly finished: readonly string[];
    /** People who were missing in teams that were here, each with the team. */
    readonly absentMembers: readonly { readonly team: string; readonly names: readonly string[] }[];
  };
}

/** Tries that a row needs, taken over all teams, before it counts as hard (common practice, no source). */
const manyTries = 3;
const mostNamed = 3;

/** Writes a class's entry from what happened: who was there, how far teams came, and what was hard in plain words. */
export function classFacts({ day, className, activity, aim, teams, poll, exit }: ClassDay): ClassFacts {
  const present = teams.filter(({ here }) => here);
  const absent = teams.filter((team) => team.absent && !team.here);
  const finished = present.filter(({ steps }) => steps.every(({ scored, check }) => !scored || check === 'on target'));
  const count = (some: readonly TeamDay[]) => recordWords.ofTeams({ some: some.length, all: teams.length });
  return {
    entry: {
      day,
      className,
      activity,
      aim,
      present: absent.length === 0 ? count(present) : `${count(present)}, ${recordWords.absent(absent.length)}`,
      finished: exit === undefined ? count(finished) : `${count(finished)}, ${exitCount(exit)}`,
      wentWell: wentWell(present),
      hard: hard(present),
      poll,
      next: finished.length === teams.length ? '' : nextStep(present),
      notes: '',
    },
    names: {
      present: present.map(({ team }) => team),
      absent: absent.map(({ team }) => team),
      finished: finished.map(({ team }) => team),
      absentMembers: present
        .filter(({ absentMembers }) => absentMembers.length > 0)
        .map(({ team, absentMembers }) => ({ team, names: absentMembers })),
    },
  };
}

const titlesOf = (teams: readonly TeamDay[]): readonly string[] => [
  ...new Set(teams.flatMap(({ steps }) => steps.filter(({ scored }) => scored).map(({ title }) => title))),
];
const rowsOf = (teams: readonly TeamDay[], title: string): readonly StepDay[] =>
  teams.flatMap(({ steps }) => steps.filter((step) => step.scored && step.title === title));

/** Rows that every team present has on target, at the first try as far as was counted. */
function wentWell(present: readonly TeamDay[]): string {
  if (present.length === 0) return '';
  const titles = titlesOf(present).filter((title) =>
    rowsOf(present, title).every(({ check, tries }) => check === 'on target' && tries <= 1),
  );
  return titles.length === 0 ? '' : recordWords.wentWell(titles.slice(0, mostNamed));
}

/** The rows with most tries, and what the values still open match in most teams. */
function hard(present: readonly TeamDay[]): string {
  const rows = titlesOf(present)
    .map((title) => {
      const steps = rowsOf(present, title);
      return {
        title,
        tries: steps.reduce((sum, { tries }) => sum + tries, 0),
        teams: steps.filter(({ tries }) => tries > 1).length,
      };
    })
    .filter(({ tries, teams }) => tries >= manyTries && teams > 0)
    .sort((one, other) => other.tries - one.tries)
    .slice(0, mostNamed);
  const matches = new Map<string, number>();
  for (const { steps } of present) {
    const said = new Set(
      steps.filter(({ check, entry }) => check === 'not yet' && entry !== '').map(({ lookAt }) => matchedBy(lookAt)),
    );
    for (const words of said) if (words !== '') matches.set(words, (matches.get(words) ?? 0) + 1);
  }
  const commonest = [...matches.entries()].sort(([, one], [, other]) => other - one).slice(0, 2);
  return [
    ...(rows.length === 0 ? [] : [recordWords.mostTries(rows)]),
    ...(commonest.length === 0 ? [] : [recordWords.stillOpen(commonest.map(([words, teams]) => ({ words, teams })))]),
  ].join(' ');
}

/** The first sentence of a row's feedback without its opening: what the value matches. Empty for feedback of another kind. */
function matchedBy(lookAt: string): string {
  const opening = remarks.oneFits.slice(0, remarks.oneFits.indexOf('{fits}'));
  if (!lookAt.startsWith(opening)) return '';
  const end = lookAt.indexOf('. ');
  return lookAt.slice(opening.length, end < 0 ? lookAt.length : end);
}

/** The row that most teams have before them, to begin with next time: one that needs another look, or the next blank one. */
function nextStep(present: readonly TeamDay[]): string {
  const waiting = new Map<string, number>();
  for (const { steps } of present) {
    const isOpen = ({ scored, check }: StepDay) => scored && check !== 'on target';
    const reached = steps.reduce((last, { entry }, index) => (entry === '' ? last : index), -1);
    const open =
      steps.find((step) => isOpen(step) && step.entry !== '') ??
      steps.slice(reached + 1).find(isOpen) ??
      steps.find(isOpen);
    if (open !== undefined) waiting.set(open.title, (waiting.get(open.title) ?? 0) + 1);
  }
  const [first] = [...waiting.entries()].sort(([, one], [, other]) => other - one);
  return first === undefined ? '' : recordWords.goOnAt({ title: first[0], teams: first[1] });
}
