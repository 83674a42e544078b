import type { StandIn } from '../../src/preview/standin/openStandIn.ts';

interface Counting {
  countHost(name: string): void;
}

/** Calls that only look at something, or that make a value in the script: the file is left alike by them. */
const looksOnly = /\.(get|is|find|with|create|new|can|require|when|build|format)|Builder\./;

/** Calls that change the workbook or the script's stores: between two of them the file is left alike. */
const isChange = (name: string): boolean =>
  /\.(set|insert|add|protect|hide|delete|remove|clear|releaseLock)/.test(name) && !/Builder\./.test(name);

export interface Change {
  /** Which change it is, from 1. */
  readonly place: number;
  readonly name: string;
}

/** From now on every change is noted. The list grows as the host works. */
export function changesOf(host: StandIn): readonly Change[] {
  const changes: Change[] = [];
  watch(host, (name) => {
    if (isChange(name)) changes.push({ place: changes.length + 1, name });
  });
  return changes;
}

/** Places to stop at: while one size after another is set, the file is left alike between the first and the last. */
export const stopsIn = (changes: readonly Change[]): readonly Change[] =>
  changes.filter(
    ({ name }, index) =>
      !/Heights|Widths/.test(name) || name !== changes[index - 1]?.name || name !== changes[index + 1]?.name,
  );

/** From now on every change, or one in so many, is noted with the workbook as it stood before it. */
export function saveAtChanges(host: StandIn, each = 1): readonly (Change & { readonly saved: string })[] {
  const changes: (Change & { saved: string })[] = [];
  let place = 0;
  watch(host, (name) => {
    if (!isChange(name)) return;
    place += 1;
    if (place % each === 0) changes.push({ place, name, saved: host.save() });
  });
  return changes;
}

/** From now on the workbook is kept as it stands just before these changes: what is left where the script is ended. */
export function savedBefore(host: StandIn, wanted: readonly Change[]): ReadonlyMap<Change, string> {
  const saved = new Map<Change, string>();
  const byPlace = new Map(wanted.map((change) => [change.place, change]));
  let place = 0;
  watch(host, (name) => {
    if (!isChange(name)) return;
    place += 1;
    const change = byPlace.get(place);
    if (!change) return;
    if (change.name !== name) throw new Error(`Expected change ${place} to be ${change.name} again, received ${name}.`);
    saved.set(change, host.save());
  });
  return saved;
}

/** What somebody does meanwhile, told which call of the host comes next. */
type Deed = (name: string) => void;
type Acting = { readonly stop: () => void };

/** From now on somebody does something just before the `number`-th change, once, while the script is at work. */
export const actAtChange = (host: StandIn, number: number, act: Deed): Acting => actAt(host, number, act, isChange);

/** The same just before the `number`-th call of the host; reading counts as well. */
export const actAtCall = (host: StandIn, number: number, act: Deed): Acting => actAt(host, number, act, () => true);

/** Or before every call: who acts picks the moment. */
export const actAtEveryCall = (host: StandIn, act: Deed): Acting => {
  let isActing = false;
  const stop = watch(host, (name) => {
    if (isActing) return;
    isActing = true;
    act(name);
    isActing = false;
  });
  return { stop };
};

function actAt(host: StandIn, number: number, act: Deed, counts: (name: string) => boolean): Acting {
  let met = 0;
  let isActing = false;
  const stop = watch(host, (name) => {
    if (isActing || !counts(name)) return;
    met += 1;
    if (met !== number) return;
    isActing = true;
    act(name);
    isActing = false;
  });
  return { stop };
}

/** Hands out an object or builds a value in the script, and asks the file for nothing. */
const handsOut =
  /\.new|Builder\.|Finder|^(ConditionalFormatRule|BooleanCondition|DataValidation)\.|getActiveSpreadsheet$|getDocument|\.getRange(s|List)?$|getDataRange$|getSheetId$/;

/** Whether a call never reaches the host: it cannot fail there, and nobody can do anything before it and behind it. */
export const asksNothing = (name: string): boolean => handsOut.test(name) && name !== 'DeveloperMetadataFinder.find';

/** Whether the file may be another after a call than before it. */
export const mayChange = (name: string): boolean => !looksOnly.test(name);

/** From now on every call is noted. The list grows as the host works. */
export function callsOf(host: StandIn): readonly string[] {
  const calls: string[] = [];
  watch(host, (name) => calls.push(name));
  return calls;
}

export interface Failure {
  /** Calls so far, of those that count. */
  readonly calls: () => number;
  /** Lets go on from here without failing. */
  readonly stop: () => void;
}

/**
 * From now on the host fails at its `number`-th call, once, as it does when it is too busy; reading counts as well. Or at
 * all calls from there on, as where the script was ended: then nothing of it can put anything right.
 */
export const failAtCall = (host: StandIn, number: number, isGone = false): Failure =>
  failAt(host, { number, isGone, counts: () => true });

/** The same among the calls that reach the host. */
export const failWhereAsked = (host: StandIn, number: number, isGone: boolean): Failure =>
  failAt(host, { number, isGone, counts: (name) => !asksNothing(name) });

function failAt(
  host: StandIn,
  { number, isGone, counts }: { number: number; isGone: boolean; counts: (name: string) => boolean },
): Failure {
  let calls = 0;
  const stop = watch(host, (name) => {
    if (!counts(name)) return;
    calls += 1;
    if (calls === number || (isGone && calls > number)) throw tooBusy();
  });
  return { calls: () => calls, stop };
}

const tooBusy = (): Error => new Error('Service Spreadsheets failed while accessing document.');

/** From now on the host fails once, at the call behind the first one of this name. */
export function failBehind(host: StandIn, called: string): void {
  let isNext = false;
  let hasFailed = false;
  watch(host, (name) => {
    if (isNext && !hasFailed) {
      hasFailed = true;
      throw tooBusy();
    }
    isNext = name === called;
  });
}

/** Tells of every call of the host before it is made. */
function watch(host: StandIn, told: (name: string) => unknown): () => void {
  const counts = host.counts as unknown as Counting;
  const count = counts.countHost;
  counts.countHost = function (this: unknown, name: string) {
    count.call(counts, name);
    told(name);
  };
  return () => {
    counts.countHost = count;
  };
}
