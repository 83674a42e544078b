import { activityById } from '../../src/lab/lesson/activities.ts';
import { defaultSettings, defaultShelf } from '../../src/lab/lesson/defaultSettings.ts';
import type { Setup, TeamPlan } from '../../src/lab/lesson/setup.ts';
import type { Lesson } from '../../src/workbook/lesson.ts';

/** An invented lesson with two classes; the second begins with names that a spreadsheet could take for formulas. */
export const hostileNames = ['=1+1', '+x', '@a', '-2', '<b>', "it's"] as const;

const activity = activityById('stock and dilution');
if (activity === undefined) throw new Error('Expected the everyday activity.');

const givensFor = (index: number): Record<string, string> => ({
  formula: 'KBr',
  'stock molarity': `0.${30 + index}0`,
  flask: '200',
  'target molarity': `0.1${17 + index}`,
  'target volume': '50',
  ion: 'Br-',
  purity: '',
});

const classes = [
  { name: 'Fern class', teams: ['Otter', 'Heron'] },
  { name: "Moss [it's a class]", teams: [...hostileNames] },
];

export const setup: Setup = {
  activity: activity.id,
  givens: givensFor(0),
  ownNumbers: true,
  settings: defaultSettings,
  shelf: defaultShelf,
  classes,
};

export const teams: readonly TeamPlan[] = classes.flatMap(({ name, teams: names }, classIndex) =>
  names.map((team, index) => ({
    key: `c${classIndex + 1}-t${index + 1}`,
    className: name,
    team,
    givens: givensFor(classIndex * 3 + index),
  })),
);

export const lesson: Lesson = {
  setup,
  activity,
  teams,
  givenNames: activity.givens.map(({ name }) => name),
  invented: false,
};
