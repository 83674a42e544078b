import type { DeskArguments, DeskCall } from '../../src/desk/acts.ts';
import { beginBuild } from '../../src/desk/building/beginBuild.ts';
import { buildKinds, type File, look } from '../../src/desk/file/look.ts';
import type { Outcome } from '../../src/desk/outcome.ts';
import type { BuildState } from '../../src/desk/views.ts';
import { sampleSetup } from '../../src/lab/lesson/sampleLesson.ts';
import type { Setup } from '../../src/lab/lesson/setup.ts';
import type { StandIn } from '../../src/preview/standin/openStandIn.ts';
import { classColumns as at } from '../../src/workbook/layout.ts';
import { answerOf, buildSetup, call, finish, open, run, stepRow, typeIn } from './bench.ts';
import { sheetState } from './cells.ts';
import { callsOf } from './hostFailure.ts';
import { setup } from './setup.ts';

export const sheet = 'Fern class';
export const small: Setup = {
  ...setup,
  settings: { ...setup.settings, 'exit questions': '1' },
  classes: [{ name: sheet, teams: ['Otter', 'Heron'] }],
};
const other: Setup = { ...small, settings: { ...small.settings, seed: '77' } };
const day = (number: number) => () => new Date(`2026-03-0${number}T10:00:00Z`);

/** Files that actions begin from, each made once. */
const files = {
  'an empty file': () => open({ clock: day(2) }).save(),
  lesson: () => {
    const host = open({ clock: day(2) });
    buildSetup(host, small);
    const row = stepRow(host, { sheet, key: 'c1-t1', step: 'molar mass' });
    typeIn(host, { sheet, cells: [[row, at.entry, '119.00']] });
    typeIn(host, { sheet, cells: [[row + 1, at.entry, '7']] });
    typeIn(host, { sheet, cells: [[row - 2, at.who, 'Ana, Ben']] });
    return host.save();
  },
  'checks from the sidebar': () => {
    const host = open({ clock: day(2) });
    buildSetup(host, { ...small, settings: { ...small.settings, 'checks come from': 'sidebar' } });
    const row = stepRow(host, { sheet, key: 'c1-t1', step: 'molar mass' });
    typeIn(host, { sheet, cells: [[row, at.entry, '119.00']] });
    return host.save();
  },
  'a lesson put away': () => {
    const host = open({ saved: savedAs('lesson'), clock: day(3) });
    finish(host, call(host, 'nextLesson', other));
    return host.save();
  },
  'the sample and a lesson': () => {
    const host = open({ clock: day(2) });
    const whole = sampleSetup();
    // One class and two teams of the sample: its sheets are the same, and there are fewer calls to go through.
    const classes = whole.classes.slice(0, 1).map(({ name, teams }) => ({ name, teams: teams.slice(0, 2) }));
    const wish = { setup: { ...whole, classes }, sample: true, lesson: '2026-03-02.1', answers: {} };
    const page: File = { book: undefined };
    finish(host, run(host, beginBuild(page, answerOf(run(host, look(page, buildKinds))), wish)));
    finish(host, call(host, 'startBuild', small, { sample: 'keep' }));
    const own = answerOf(call(host, 'readLessons')).classes.find(({ name }) => name === sheet);
    const row = stepRow(host, { sheet, key: own?.keys[0] ?? '', step: 'molar mass' });
    typeIn(host, { sheet, cells: [[row, at.entry, '119.00']] });
    return host.save();
  },
  'a copy to give on': () => {
    const host = open({ saved: savedAs('lesson'), clock: day(2) });
    const own = host.book.addSheet('Seats');
    host.type('teacher', [{ sheet: own.id, row: 1, column: 1, text: 'Front bench' }]);
    const lastHelp = host.book.lastRow(sheetState(host, 'Help'));
    const hint = [[lastHelp + 1, 1, 'molar mass'] as const, [lastHelp + 1, 3, 'Look at the poster.'] as const];
    typeIn(host, { sheet: 'Help', seat: 'teacher', cells: hint });
    return host.save();
  },
} as const;
const made = new Map<keyof typeof files, string>();
export function savedAs(name: keyof typeof files): string {
  const known = made.get(name) ?? files[name]();
  made.set(name, known);
  return known;
}

export interface Action {
  readonly name: DeskCall;
  readonly from?: keyof typeof files;
  /** A press; what is under way is left where it is, for the next step. */
  readonly press: (host: StandIn) => Outcome<unknown>;
  /** Asks the host hundreds of times. */
  readonly isLong?: true;
  /** From one failure to the next, where a third of its calls fail sooner than with every third one: some are met again. */
  readonly apart?: number;
  /** Whether the places at which such an action has once been left half done are tried alone in the short form. */
  readonly atDelicate?: true;
}
const act = <Name extends DeskCall>(name: Name, ...about: DeskArguments<Name>): Action => ({
  name,
  press: (host) => call(host, name, ...about) as Outcome<unknown>,
});
/** The same press, or nothing yet where the file says that something is under way. */
const build = <Name extends DeskCall>(name: Name, ...about: DeskArguments<Name>): Action => ({
  name,
  isLong: true,
  press: (host) => {
    const lesson = call(host, 'readLesson');
    const under = lesson.ok ? lesson.value.building : undefined;
    return under === undefined ? (call(host, name, ...about) as Outcome<unknown>) : { ok: true, value: under };
  },
});
export const isUnderWay = (outcome: Outcome<unknown>): boolean =>
  outcome.ok && (outcome.value as Partial<BuildState> | null)?.finished === false;
/** Goes on as a page does, until the build is finished, a step of it is refused, or its end is known. */
export function goOn(host: StandIn, first: Outcome<unknown>, isKnown: () => boolean = () => false): Outcome<unknown> {
  let state = first;
  for (let steps = 0; isUnderWay(state) && steps < 40 && !isKnown(); steps += 1) state = call(host, 'continueBuild');
  return state;
}
const proposal = (host: StandIn) => {
  const shown = answerOf(call(host, 'readRecord')).classes[0];
  if (shown === undefined) throw new Error('Expected a class.');
  return { entry: { ...(shown.saved ?? shown.proposal), notes: 'Calm.' }, base: shown.saved ?? null };
};

/** Read beside the file, so that it counts among no calls; most presses in a row find the file as the last one did. */
const proposalIn = (() => {
  let known: { readonly saved: string; readonly proposal: ReturnType<typeof proposal> } | undefined;
  return (saved: string) => {
    if (known?.saved !== saved) known = { saved, proposal: proposal(open({ saved, clock: day(2) })) };
    return known.proposal;
  };
})();

/** Everything that a person sets going in the sidebar and that writes. */
export const actions: readonly Action[] = [
  act('setAbsent', 'c1-t2', true),
  act('setMembers', sheet, 'c1-t2', { names: 'Cleo, Dov', absent: [], base: '' }),
  { ...act('setOwnHelp', 'c1-t1', { level: '1', extension: 'Make it half as strong.' }), atDelicate: true },
  act('showExitChecks', sheet, true),
  act('passRoles', sheet),
  act('closeClass', sheet, true),
  act('checkAgain'),
  { ...act('workOutChecks'), from: 'checks from the sidebar' },
  act('writePrepareSheet', true),
  act('writeKeySheet', true),
  act('hideTeachersSheets'),
  act('goToTeam', sheet, 'c1-t2'),
  {
    name: 'saveRecord',
    press: (host) => call(host, 'saveRecord', [proposalIn(host.save())]),
  },
  build('startBuild', { ...small, classes: [{ name: sheet, teams: ['Otter'] }] }),
  { ...build('startBuild', small), from: 'an empty file' },
  { ...build('addTeam', sheet, 'Wren'), apart: 5 },
  { ...build('addClass', 'Reed class', ['Carp']), apart: 5 },
  build('addPractice', sheet),
  { ...build('nextLesson', other, {}, { sameDay: true }), apart: 5 },
  { ...build('openEarlier', '2026-03-02.1'), from: 'a lesson put away', atDelicate: true },
  { ...build('removeSample'), from: 'the sample and a lesson' },
];

/** Of a copy that is to be given on: what was typed there is taken out of it. */
export const emptying: Action = {
  ...build('emptyCopy', { fileName: 'Workbook', keepHints: true, removeOthers: false }),
  from: 'a copy to give on',
  apart: 4,
};

/** Lets an action run through where nothing fails. */
export function undisturbed(action: Action): { readonly host: StandIn; readonly calls: readonly string[] } {
  const host = open({ saved: savedAs(action.from ?? 'lesson'), clock: clockOf(action) });
  const calls = callsOf(host);
  answerOf(goOn(host, action.press(host)));
  return { host, calls };
}

export const clockOf = ({ from }: Action) => day(from === 'a lesson put away' ? 4 : 2);
/** Said by a second press of what is all there already. */
export const standsAlready =
  /different name for each team|called “|began|begun today|put away in this file|no sample to remove/;
