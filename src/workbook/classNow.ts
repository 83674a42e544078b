import { isExitStep } from '../lab/exit/exitStep.ts';
import { isPractice, isTeam } from '../lab/lesson/practice.ts';
import { sendsElsewhere } from '../lab/record/sendsElsewhere.ts';
import { slipSaid } from '../lab/record/slipSaid.ts';
import { closedRow, remarks } from '../lab/texts/feedback.ts';
import { type BlockReading, type ClassReading, notYetKnown, type StepReading } from './readClassSheet.ts';
import { words } from './words.ts';

/** What the teacher sees of a team in the class now. */
interface TalkFirst {
  readonly team: string;
  readonly reason: string;
  /** True for a team that needs no help but a question to go on with. */
  readonly ready?: true;
}

export interface ClassNow {
  /** Most pressing first, at most one line for each team. */
  readonly talkFirst: readonly TalkFirst[];
  /** The feedback that most teams have in front of them at the moment, as a sentence, or empty. */
  readonly sayToClass: string;
  readonly notYetKnown: number;
}

/** From this many tries on a row that is still open, a conversation helps more than another try (common practice, no source). */
const manyTries = 3;
/** Minutes without a new entry after which a team may be stuck (common practice, no source). */
const quietMinutes = 8;
/** A last entry so long ago is one of a lesson before (common practice, no source). */
const goneMinutes = 180;
/** After so many without an entry of any team the class is over, and nobody is stuck (common practice, no source). */
export const minutesAfterClass = 20;
/** Fewer teams than this make no theme for the whole class. */
const teamsForTheme = 2;

const minuteMs = 60_000;

export interface ClassNowInput {
  readonly reading: ClassReading;
  /** Titles of the steps by id. */
  readonly titles: ReadonlyMap<string, string>;
  /** Ids of steps that are never scored. */
  readonly told: readonly string[];
  /** Ids of rows in which the cautions are read. */
  readonly ticked?: readonly string[];
  /** What a team was given that cannot be used, by its key: said in one sentence, with the cell where it stands. */
  readonly badGivens?: ReadonlyMap<string, string>;
  /** Keys of teams that are absent: nobody can talk to them today. */
  readonly absent?: readonly string[];
  /** A question for a team that has finished. */
  readonly extension: string;
  /** Milliseconds since 1970. */
  readonly now: number;
}

/** Works out whom to talk to first and what to say to everybody. For the teacher's eyes: nothing of it goes into a sheet. */
export function classNow(input: ClassNowInput): ClassNow {
  const { reading, absent = [], now } = input;
  const isOver =
    minutesSince(
      reading.blocks.flatMap(({ steps }) => steps),
      now,
    ) >= minutesAfterClass;
  const concerns = reading.blocks
    .filter(({ key }) => !absent.includes(key))
    .map((block) => ({ block, concern: concernOf(block, { ...input, isOver }) }))
    .filter((entry): entry is { block: BlockReading; concern: Concern } => entry.concern !== undefined);
  concerns.sort(({ concern: one }, { concern: other }) => one.rank - other.rank || other.weight - one.weight);
  return {
    talkFirst: concerns.map(({ block, concern: { rank, reason } }) => ({
      team: block.team,
      reason,
      ...(rank === ranks.ready ? { ready: true as const } : {}),
    })),
    sayToClass: themeOf(reading.blocks.filter(isTeam)),
    notYetKnown: reading.blocks.reduce(
      (sum, { steps }) => sum + steps.filter(({ check }) => check === notYetKnown).length,
      0,
    ),
  };
}

/** Lower comes first: a team that is stuck before one that has only begun to be, and one that has finished after both. */
const ranks = { badGiven: 0, asks: 1, sameTwice: 2, manyTries: 3, quiet: 4, notYet: 5, ready: 6 } as const;

interface Concern {
  readonly rank: (typeof ranks)[keyof typeof ranks];
  /** Among teams of one rank the greater comes first. */
  readonly weight: number;
  readonly reason: string;
}

/** What single students answer at the end says nothing of how their team gets on. */
const teamRows = (steps: readonly StepReading[]): readonly StepReading[] =>
  steps.filter(({ step }) => !isExitStep(step));

/** Rows of a class that is closed ask for nothing, so nobody has to go there. */
const settled: readonly string[] = ['on target', notYetKnown, closedRow.check];
const isOpen = ({ check }: StepReading): boolean => !settled.includes(check);
const isWrong = ({ check, entry }: StepReading): boolean => check === 'not yet' && entry !== '';

/** Why to go to a team; before the reason itself stands the first row that is not right, whatever else is true of it. */
function concernOf(
  block: BlockReading,
  { titles, told, ticked = [], badGivens, extension, now, isOver }: ClassNowInput & { readonly isOver: boolean },
): Concern | undefined {
  const { classNow: say } = words;
  const title = (step: string) => titles.get(step) ?? step;
  const scored = teamRows(block.steps).filter(({ step }) => !told.includes(step));
  const open = scored.filter(isOpen);
  // Whoever practises again goes at a pace of their own: they are talked to when they ask.
  if (isPractice(block) && !open.some(({ helpWanted }) => helpWanted > 0)) return undefined;
  if (scored.length > 0 && scored.every(({ check }) => check === 'on target')) {
    return { rank: ranks.ready, weight: 0, reason: say.allDone(extension) };
  }
  if (open.length === 0) return undefined;

  const isTicked = ({ step }: StepReading) => ticked.includes(step);
  const unread =
    open.some((row) => isTicked(row)) && block.steps.some(({ step, entry }) => entry !== '' && !ticked.includes(step));
  const first = open.find((row) => row.entry !== '' && !isTicked(row) && !sendsElsewhere(row.lookAt));
  const bad = badGivens?.get(block.key);
  const concern = (rank: Concern['rank'], weight: number, reason: string, row = first): Concern => ({
    rank,
    weight,
    reason: [
      bad ?? '',
      row === undefined ? '' : rowWords(row, title(row.step), bad !== undefined),
      reason,
      unread ? say.cautions : '',
    ]
      .filter((sentence) => sentence !== '')
      .join(' '),
  });
  if (bad !== undefined) return concern(ranks.badGiven, 0, '');

  const next = open.find((row) => !isTicked(row)) ?? open[0];
  const asking = open.find(({ helpWanted }) => helpWanted > 0);
  if (asking !== undefined) {
    const reason = say.askedForHelp({ step: title(asking.step), level: asking.helpWanted });
    return concern(ranks.asks, asking.helpWanted, reason);
  }
  const repeated = repeatedFeedback(scored);
  if (repeated !== undefined) {
    const [one, other] = repeated;
    const reason = say.sameTwice({ first: title(one.step), second: title(other.step) });
    return concern(ranks.sameTwice, one.tries + other.tries, reason);
  }
  const tried = [...open].sort((one, other) => other.tries - one.tries)[0];
  if (tried !== undefined && tried.tries >= manyTries && tried.entry !== '') {
    return concern(ranks.manyTries, tried.tries, say.manyTries({ step: title(tried.step), tries: tried.tries }));
  }
  const minutes = minutesSince(block.steps, now);
  if (!isOver && minutes >= quietMinutes && minutes < goneMinutes)
    return concern(ranks.quiet, minutes, say.quiet(minutes), first ?? next);
  const wrong = open.find(isWrong);
  return wrong === undefined ? undefined : concern(ranks.notYet, wrong.tries, '', first ?? wrong);
}

/** Whole minutes since the last entry in these rows; without end where there is none. */
function minutesSince(steps: readonly StepReading[], now: number): number {
  const last = steps.reduce((latest, { lastEntry }) => Math.max(latest, lastEntry ?? 0), 0);
  return last === 0 ? Number.POSITIVE_INFINITY : Math.floor((now - last) / minuteMs);
}

/** A row that is not right, and the slip in it where one is known. */
function rowWords({ check, entry, lookAt }: StepReading, step: string, lacksGiven: boolean): string {
  const { classNow: say } = words;
  if (entry === '') return say.blankRow(step);
  const slip = slipSaid(lookAt);
  if (check === 'not yet' && slip !== undefined) {
    return 'words' in slip ? say.matches({ step, words: slip.words }) : say.asked({ step, questions: slip.questions });
  }
  if (check === 'close') return say.almost(step);
  if (check === 'follows') return say.follows(step);
  if (check !== 'unreadable') return say.notRight(step);
  return lacksGiven ? say.unchecked(step) : say.unreadable(step);
}

/** Words that fit any wrong value, or that only send the team to another row: they name no slip. */
const general = ['notYet', 'farFromTarget', 'follows', 'needsRow', 'lookFirst', 'waitForRow'] as const;

const namesASlip = ({ lookAt }: StepReading): boolean =>
  lookAt !== '' && !general.some((name) => lookAt.startsWith(remarks[name].split('{')[0] ?? ''));

/** Two rows of one team whose wrong values get the same words: the same idea is behind both. */
function repeatedFeedback(steps: readonly StepReading[]): readonly [StepReading, StepReading] | undefined {
  const wrong = steps.filter((step) => isWrong(step) && namesASlip(step));
  for (const [index, first] of wrong.entries()) {
    const second = wrong.slice(index + 1).find(({ lookAt }) => lookAt === first.lookAt);
    if (second !== undefined) return [first, second];
  }
  return undefined;
}

/** The words that most teams read beside a wrong value, said once to everybody. */
function themeOf(blocks: readonly BlockReading[]): string {
  const teamsByWords = new Map<string, number>();
  for (const { steps } of blocks) {
    const said = new Set(
      teamRows(steps)
        .filter((step) => isWrong(step) && namesASlip(step))
        .map(({ lookAt }) => lookAt),
    );
    for (const lookAt of said) teamsByWords.set(lookAt, (teamsByWords.get(lookAt) ?? 0) + 1);
  }
  const [theme] = [...teamsByWords.entries()].sort(([, one], [, other]) => other - one);
  return theme === undefined || theme[1] < teamsForTheme
    ? ''
    : words.classNow.theme({ teams: theme[1], lookAt: theme[0] });
}
