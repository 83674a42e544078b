import { expect } from 'vitest';
import type { DeskAnswer, DeskArguments, DeskCall } from '../../src/desk/acts.ts';
import type { Outcome } from '../../src/desk/outcome.ts';
import type { BuildState } from '../../src/desk/views.ts';
import { defaultSettings } from '../../src/lab/lesson/defaultSettings.ts';
import type { Setup } from '../../src/lab/lesson/setup.ts';
import { exitTexts } from '../../src/lab/texts/exit.ts';
import { setup } from '../host/setup.ts';

/** A file in which a school works: on paper, or over the script. */
export interface School {
  readonly call: <Name extends DeskCall>(name: Name, ...about: DeskArguments<Name>) => DeskAnswer<Name>;
  readonly finish: (first: Outcome<BuildState>) => BuildState;
  /** From now on it is ten o'clock on this day of March. */
  readonly on: (day: string) => void;
  readonly type: (at: Place, text: string) => void;
  readonly entry: (at: Place) => string;
  /** Says in the heading row who is in a team, and reads it. */
  readonly people: (at: Omit<Place, 'step'>, text?: string) => string;
  readonly names: () => readonly string[];
  /** Words of a whole sheet. */
  readonly words: (sheet: string) => string;
}
interface Place {
  readonly sheet: string;
  readonly key: string;
  readonly step: string;
}

/** Invented classes of two courses. */
const [ash, elm, oak, yew] = ['Ash class', 'Elm class', 'Oak class', 'Yew class'] as const;
const classSetup = (name: string) => ({ name, teams: [`Otter of ${name[0]}`, `Heron of ${name[0]}`] });
const plan = (
  {
    activity,
    givens,
    seed = '1',
    exit = '0',
  }: { activity: string; givens: Setup['givens']; seed?: string; exit?: string },
  ...names: readonly string[]
): Setup => ({
  activity,
  givens,
  ownNumbers: true,
  settings: { ...defaultSettings, activity, seed, 'exit questions': exit },
  shelf: setup.shelf,
  classes: names.map(classSetup),
});
const bromide = { activity: setup.activity, givens: setup.givens };
const bicarbonate = {
  activity: 'solution from a solid',
  givens: { formula: 'NaHCO3', molarity: '0.250', flask: '200', ion: 'Na+' },
};

/**
 * Three weeks of four classes in two courses: five lessons, one of them changed in the middle, one opened again, teams
 * that are away, exit questions, a block for practice and a class closed at the bell. Whatever a team types is looked for after each act, in its lesson, in use or put away; every day on which
 * a class typed has to stand in the Record once its lesson was put away. Hands back how often somebody pressed.
 */
export function liveThreeWeeks(school: School): { readonly presses: number; readonly lessons: number } {
  const typed: { readonly lesson: string; readonly className: string; key: string; step: string; text: string }[] = [];
  const days: { readonly className: string; readonly day: string; readonly lesson: string }[] = [];
  let presses = 0;
  let today = '';
  const lessonOf = (className: string): { id: string; away: boolean } => {
    const { inUse } = done(school.call('readLessons'));
    const found = inUse.find(({ classes }) => classes.includes(className));
    if (found === undefined) throw new Error(`Expected a lesson of ${className}.`);
    return { id: found.id, away: false };
  };
  const recordOf = (className: string) => {
    const found = done(school.call('readRecord')).classes.find(({ proposal }) => proposal.className === className);
    if (found === undefined) throw new Error(`Expected ${className} in the record of ${today}.`);
    return found;
  };
  const keysOf = (className: string): readonly string[] =>
    done(school.call('readTeams'))
      .classes.find(({ name }) => name === className)
      ?.teams.map(({ key }) => key) ?? [];

  const on = (day: string) => {
    today = `2026-03-${day}`;
    school.on(day);
  };
  const type = (className: string, key: string, step: string, text: string) => {
    school.type({ sheet: className, key, step }, text);
    typed.push({ lesson: lessonOf(className).id, className, key, step, text });
  };
  /** A class works: each team types into a row. */
  const work = (className: string, step: string, text: string) => {
    const { id: lesson } = lessonOf(className);
    for (const key of keysOf(className)) type(className, key, step, text);
    days.push({ className, day: today, lesson });
  };
  const press = (count: number, act: () => Outcome<BuildState>) => {
    presses += count;
    expect(school.finish(act()).finished).toBe(true);
    isWhole();
  };
  /** Plan, next lesson, build. */
  const next = (wanted: Setup, wish = {}) => press(3, () => school.call('nextLesson', wanted, wish));

  function isWhole(): void {
    const { inUse, away, classes } = done(school.call('readLessons'));
    // A class is at one lesson, and each lesson is in use or away, or both for different classes.
    expect(classes.map(({ name }) => name).sort()).toEqual([...new Set(classes.map(({ name }) => name))].sort());
    // Only a Plan whose numbers were made anew is kept beside the new one.
    expect(school.names().filter((name) => /, kept /.test(name) && !name.startsWith('Plan'))).toEqual([]);
    for (const { lesson, className, key, step, text } of typed) {
      const isInUse = inUse.some((one) => one.id === lesson && one.classes.includes(className));
      const isAway = away.some((one) => one.id === lesson && one.classes.includes(className));
      expect([lesson, className, isInUse !== isAway]).toEqual([lesson, className, true]);
      const sheet = isInUse ? className : awaySheet(school, className, lesson);
      expect([sheet, key, step, school.entry({ sheet, key, step })]).toEqual([sheet, key, step, text]);
    }
    const put = days.filter(({ lesson, className }) =>
      away.some(({ id, classes: its }) => id === lesson && its.includes(className)),
    );
    const record = put.length === 0 ? '' : school.words('Record');
    for (const { className, day } of put) expect(record).toContain(`${day}|${className}`);
    expect(record).not.toMatch(/Ana|Bo\b|Practice/);
  }

  // First week: each course begins.
  on('02');
  press(1, () => school.call('startBuild', plan({ ...bromide, exit: '2' }, ash, elm)));
  for (const key of keysOf(ash)) school.people({ sheet: ash, key }, 'Ana, Bo');
  work(ash, 'molar mass', '119.0');
  // Two seats of a team answer, one of them rightly; somebody who was away practises; then the bell rings.
  const [first = ''] = keysOf(ash);
  const key = done(school.call('readKey')).teams.find((team) => team.key === first);
  const right = key?.lines.find(({ title }) => title === exitTexts.title(1))?.answer;
  type(ash, first, 'exit 1', right ?? '');
  type(ash, first, 'exit 2', '3');
  const before = JSON.stringify(recordOf(ash).proposal);
  press(2, () => school.call('addPractice', ash));
  type(ash, 'practice-1', 'molar mass', '12');
  type(ash, 'practice-1', 'exit 1', '12');
  expect(JSON.stringify(recordOf(ash).proposal)).toBe(before);
  expect(recordOf(ash).proposal).toMatchObject({
    present: '2 of 2 teams',
    finished: '0 of 2 teams, exit question right: 1 of 2',
  });
  expect(done(school.call('readClass', ash)).exit).toMatchObject({ seats: 4, answered: 2, right: 1 });
  presses += 1;
  expect(done(school.call('closeClass', ash, true))).toEqual({ noted: true });
  expect(done(school.call('readClass', ash)).closed).toBe(true);
  expect(school.words('Record')).toContain(`${today}|${ash}`);
  isWhole();
  on('03');
  // The class is closed until somebody opens it again, and no other one is.
  expect(done(school.call('readClass', ash)).closed).toBe(true);
  expect(done(school.call('readClass', elm)).closed).toBeUndefined();
  presses += 1;
  done(school.call('closeClass', ash, false));
  expect(done(school.call('readClass', ash)).closed).toBeUndefined();
  // The other course begins its own lesson in the same file; nobody leaves a lesson for it.
  next(plan(bicarbonate, oak, yew));
  expect(done(school.call('readLessons')).inUse.map(({ classes }) => classes)).toEqual([
    [ash, elm],
    [oak, yew],
  ]);
  work(elm, 'molar mass', '119.00');
  work(oak, 'molar mass', '84.0');
  const [absent = ''] = keysOf(elm);
  done(school.call('setAbsent', absent, true));
  expect(
    done(school.call('readTeams')).classes.flatMap(({ teams }) => teams.filter((team) => team.absent)),
  ).toHaveLength(1);

  // Second week: one class of a course goes on, the other is a week behind.
  on('09');
  next(plan({ ...bicarbonate, seed: '2' }, ash));
  for (const key of keysOf(ash)) expect(school.people({ sheet: ash, key })).toContain('Ana');
  work(ash, 'molar mass', '84.01');
  work(elm, 'moles of solute', '0.06');
  on('10');
  work(yew, 'molar mass', '84.007');
  // In the middle of a lesson its numbers are changed: what was typed stays.
  press(2, () => school.call('startBuild', { ...done(school.call('readLesson')).setup, ownNumbers: false }));
  on('12');
  next(plan({ ...bromide, seed: '3' }, oak, yew), { takesPeople: true });
  work(oak, 'molar mass', '119');

  // Third week: another activity is picked in the plan of a class that has begun, and that is the next lesson.
  on('16');
  const { id: ofElm } = lessonOf(elm);
  done(school.call('readLesson'));
  next(plan({ ...bicarbonate, seed: '4' }, elm));
  work(elm, 'molar mass', '84.0');
  // It comes too early: the lesson before is opened once more, and goes on.
  on('17');
  press(3, () => school.call('openEarlier', ofElm));
  expect(lessonOf(elm).id).toBe(ofElm);
  work(elm, 'mass of solute', '7.14');
  // Nobody answered an exit question today.
  expect(recordOf(elm).proposal.finished).toBe('0 of 2 teams');
  on('19');
  press(2, () => school.call('addTeam', yew, 'Wren of Y'));
  work(yew, 'molar mass', '119.0');
  const { inUse, away } = done(school.call('readLessons'));
  return { presses, lessons: new Set([...inUse, ...away].map(({ id }) => id)).size };
}

/** The sheet of a class in a lesson that is put away: the name says of which day. */
const awaySheet = (school: School, className: string, lesson: string): string => {
  const begins = `${className}, lesson of ${lesson.slice(0, 10)}`;
  return school.names().find((name) => name.startsWith(begins)) ?? begins;
};

function done<T>(outcome: Outcome<T>): T {
  if (!outcome.ok) throw new Error(outcome.problem.message);
  return outcome.value;
}
