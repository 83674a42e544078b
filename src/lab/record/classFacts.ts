import { exitCount } from '../texts/exitShown.ts';
import { recordWords } from '../texts/record.ts';
import { slipInRecord } from '../texts/slipInRecord.ts';
import type { RecordEntry } from './recordEntry.ts';
import { sendsElsewhere } from './sendsElsewhere.ts';
import { slipSaid } from './slipSaid.ts';

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
  /** The row in which the cautions are read. */
  readonly ofCautions?: boolean;
  /** False for rows that are only told and never scored. */
  readonly scored: boolean;
  /** False where it was last typed in on another day: it belongs to the record of that day. */
  readonly ofDay?: boolean;
  readonly check: string;
  readonly entry: string;
  readonly lookAt: string;
  /** At least so many; 0 where none was counted. */
  readonly tries: number;
  /** Help that was taken in the row, 0 to 3. */
  readonly helpWanted: number;
}

/** A class in one lesson on one day. */
export interface ClassDay {
  readonly day: string;
  readonly className: string;
  readonly activity: string;
  readonly aim: string;
  /** What the class worked with, by name and formula. */
  readonly substance: string;
  /** The concentrations that teams were given. */
  readonly concentrations: string;
  readonly teams: readonly TeamDay[];
  /** The lesson was begun on an earlier day: attempts of all its days are counted together. */
  readonly goesOn?: boolean;
  /** The poll in one line, or empty where there was none. */
  readonly poll: string;
  /** Answers to exit questions that came that day; left out where there were none. */
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

/**
 * Writes a class's entry from what happened: who was there, how far teams came, what went well and what was hard, in words
 * that somebody understands who was not there. A team is there unless it is marked absent and typed nothing.
 */
export function classFacts(day: ClassDay): ClassFacts {
  const { teams } = day;
  const absent = teams.filter((team) => team.absent && !team.here);
  const present = teams.filter((team) => !absent.includes(team));
  const finished = present.filter(isFinished);
  const count = (some: readonly TeamDay[]) => recordWords.ofTeams({ some: some.length, all: teams.length });
  const missing = present.reduce((sum, { absentMembers }) => sum + absentMembers.length, 0);
  return {
    entry: {
      day: day.day,
      className: day.className,
      activity: day.activity,
      aim: day.aim,
      substance: day.substance,
      concentrations: day.concentrations,
      present: recordWords.and([
        count(present),
        ...(absent.length > 0 ? [recordWords.absent(absent.length)] : []),
        ...(missing > 0 ? [recordWords.peopleAbsent(missing)] : []),
      ]),
      finished: day.exit === undefined ? count(finished) : `${count(finished)}, ${exitCount(day.exit)}`,
      wentWell: wentWell(present),
      hard: hard(present, day.goesOn === true),
      poll: day.poll,
      next: nextTime({ present, absent }),
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

const isRight = ({ check }: StepDay): boolean => check === 'on target';
const isOpen = (step: StepDay): boolean => step.scored && !isRight(step);
const isFinished = ({ steps }: TeamDay): boolean => steps.some(({ scored }) => scored) && !steps.some(isOpen);

const titlesOf = (teams: readonly TeamDay[]): readonly string[] => [
  ...new Set(teams.flatMap(({ steps }) => steps.filter(({ scored }) => scored).map(({ title }) => title))),
];
const rowsOf = (teams: readonly TeamDay[], title: string): readonly StepDay[] =>
  teams.flatMap(({ steps }) => steps.filter((step) => step.scored && step.title === title));

const isOfDay = ({ ofDay }: StepDay): boolean => ofDay !== false;

/** Wrong first and right now, without help. */
const isMended = (step: StepDay): boolean =>
  isOfDay(step) && step.scored && isRight(step) && step.tries > 1 && step.helpWanted === 0;
/** Right in all rows, the last of them that day. */
const finishedToday = (team: TeamDay): boolean =>
  isFinished(team) && team.steps.some((step) => step.scored && isOfDay(step));

/** Teams that finished, teams that found a slip of their own, and rows that every team had right at once. */
function wentWell(present: readonly TeamDay[]): string {
  if (present.length === 0) return '';
  const finished = present.filter(finishedToday).length;
  const mended = present.filter(({ steps }) => steps.some(isMended)).length;
  const [most] = ranked(present.flatMap(({ steps }) => steps.filter(isMended).map(({ title }) => title)));
  const titles = titlesOf(present).filter((title) => {
    const rows = rowsOf(present, title);
    return rows.some(isOfDay) && rows.every((step) => isRight(step) && step.tries <= 1 && step.ofCautions !== true);
  });
  return [
    ...(finished === 0
      ? []
      : [finished === present.length ? recordWords.allFinished(finished) : recordWords.someFinished(finished)]),
    ...(most === undefined ? [] : [recordWords.mended({ teams: mended, title: most[0] })]),
    ...(titles.length === 0 ? [] : [recordWords.wentWell(titles.slice(0, mostNamed))]),
  ].join(' ');
}

/** What values that are still wrong come from, in most teams first; then the row with most tries. */
function hard(present: readonly TeamDay[], goesOn: boolean): string {
  const rows = titlesOf(present)
    .map((title) => {
      const steps = rowsOf(present, title).filter(isOfDay);
      return {
        title,
        tries: steps.reduce((sum, { tries }) => sum + tries, 0),
        teams: steps.filter(({ tries }) => tries > 0).length,
        several: steps.some(({ tries }) => tries > 1),
      };
    })
    .filter(({ tries, several }) => tries >= manyTries && several)
    .sort((one, other) => other.tries - one.tries);
  const wrong = present.map(({ steps }) =>
    steps.filter(
      (step) =>
        isOfDay(step) && step.scored && step.check === 'not yet' && step.entry !== '' && !sendsElsewhere(step.lookAt),
    ),
  );
  const slipOf = ({ lookAt }: StepDay) => slipSaid(lookAt)?.slip;
  const named = (steps: readonly StepDay[]) => [
    ...new Set(steps.flatMap((step) => slipOf(step) ?? []).map(slipInRecord)),
  ];
  /** A team whose slip is known by one row needs no second sentence for another. */
  const unnamed = wrong.filter((steps) => named(steps).length === 0).flatMap((steps) => steps.slice(0, 1));
  return [
    ...ranked(wrong.flatMap(named))
      .slice(0, mostNamed)
      .map(([words, teams]) => recordWords.slip({ words, teams })),
    ...ranked(unnamed.map(({ title }) => title))
      .slice(0, 1)
      .map(([title, teams]) => recordWords.notRight({ title, teams })),
    ...rows.slice(0, 1).map((row) => recordWords.mostTries({ ...row, goesOn })),
  ].join(' ');
}

/** Where teams go on next time: at a row that needs another look, or at the next blank one; those that were away as well. */
function nextTime({
  present,
  absent,
}: {
  readonly present: readonly TeamDay[];
  readonly absent: readonly TeamDay[];
}): string {
  const waiting = present.flatMap(({ steps }) => {
    const reached = steps.reduce((last, { entry }, index) => (entry === '' ? last : index), -1);
    return (
      steps.find((step) => isOpen(step) && step.entry !== '') ??
      steps.slice(reached + 1).find(isOpen) ??
      steps.find(isOpen) ??
      []
    );
  });
  const unread = waiting.filter(({ ofCautions }) => ofCautions === true).length;
  const away = absent.filter((team) => !isFinished(team)).length;
  const places = ranked(waiting.filter(({ ofCautions }) => ofCautions !== true).map(({ title }) => title))
    .slice(0, mostNamed)
    .map(([title, teams]) => ({ title, teams }));
  return [
    ...(places.length > 0 ? [recordWords.goOnAt(places)] : []),
    ...(unread > 0 ? [recordWords.stillToRead(unread)] : []),
    ...(away > 0 ? [recordWords.wasAbsent(away)] : []),
  ].join(' ');
}

/** Each text with how often it comes, the commonest first. */
function ranked(texts: readonly string[]): readonly (readonly [text: string, times: number])[] {
  const times = new Map<string, number>();
  for (const text of texts) times.set(text, (times.get(text) ?? 0) + 1);
  return [...times.entries()].sort(([, one], [, other]) => other - one);
}
