import { describe, expect, it } from 'vitest';
import { firstSetup } from '../../src/desk/lesson/firstSetup.ts';
import { readSetup } from '../../src/desk/lesson/readSetup.ts';
import { deskWords } from '../../src/desk/words.ts';
import { defaultSettings, defaultShelf } from '../../src/lab/lesson/defaultSettings.ts';
import { setup } from './builtLesson.ts';
import { problemOf, valueIn } from './paperFile.ts';
import { said } from './said.ts';

const say = deskWords.setupProblems;
const read = (change: object = {}) => readSetup({ ...setup, ...change });
const refused = (change: object) => problemOf(read(change));
const classes = (...given: readonly unknown[]) => refused({ classes: given });
const sentence = (
  parts: { says: string; advice: string; where?: string },
  received: string,
  where = parts.where ?? '',
) => said({ ...parts, where, received });

describe('a plan as the sidebar sends it', () => {
  it('is taken as it is', () => {
    expect(valueIn(read())).toEqual(setup);
  });
  it('has its texts without blanks around them, numbers as text, and settings that are missing from the defaults', () => {
    const wish = valueIn(
      read({
        givens: { ...setup.givens, flask: 200, 'stock molarity': ' 0.300 ', 'target molarity': '0.120' },
        settings: { activity: 'something else', spare: ' 20 % ', seed: 4, figures: true },
        ownNumbers: true,
        more: 'ignored',
      }),
    );
    expect(wish.givens).toEqual({ ...setup.givens });
    expect(wish.settings).toEqual({ ...defaultSettings, spare: '20 %', seed: '4' });
    expect(wish.ownNumbers).toBe(true);
    expect(Object.keys(wish)).not.toContain('more');
    expect(valueIn(read({ ownNumbers: 'yes' })).ownNumbers).toBe(false);
  });
  it('has names in one line, of at most sixty letters', () => {
    const wish = valueIn(read({ classes: [{ name: ' Fern \n class ', teams: ['  Otter\t2 ', 'x'.repeat(61)] }] }));
    expect(wish.classes).toEqual([{ name: 'Fern class', teams: ['Otter 2', 'x'.repeat(60)] }]);
  });
  it.each([undefined, null, 'x', 7, [setup]])('is refused where it is no plan: %j', (given) => {
    expect(problemOf(readSetup(given)).message).toBe(sentence(say.shape, typeof given));
  });
  it.each(['givens', 'settings', 'shelf', 'classes'])('is refused without its %s', (part) => {
    for (const given of [undefined, null, 'x'])
      expect(refused({ [part]: given }).message).toBe(sentence(say.shape, 'a part of it'));
    expect(refused({ [part]: part === 'classes' ? {} : [] }).message).toBe(sentence(say.shape, 'a part of it'));
  });
  it.each([
    ['brewing', '“brewing”'],
    [undefined, 'nothing'],
    [null, 'nothing'],
    [7, '“7”'],
  ])('is refused with an activity that is none: %j', (activity, received) => {
    expect(refused({ activity })).toEqual({ field: 'activity', message: sentence(say.activity, received) });
  });
  it('needs every number that the activity starts from, but for those that may stay blank', () => {
    expect(refused({ givens: { ...setup.givens, flask: '  ' } })).toEqual({
      field: 'givens.flask',
      message: sentence(say.given, 'a blank', 'flask'),
    });
    expect(refused({ givens: { ...setup.givens, flask: Number.NaN } }).field).toBe('givens.flask');
    expect(valueIn(read({ givens: { ...setup.givens, purity: '', ion: '' } })).givens).toMatchObject({
      purity: '',
      ion: '',
    });
  });
});

describe('the shelf', () => {
  const shelf = (change: object) => refused({ shelf: { ...setup.shelf, ...change } });

  it.each([
    ['flasksMl', 'flasks'],
    ['pipettesMl', 'pipettes'],
  ])('has sizes above zero in %s', (part, where) => {
    for (const sizes of [[], [100, 0], [-5], ['100'], [Number.NaN], [Number.POSITIVE_INFINITY], 'none'])
      expect(shelf({ [part]: sizes })).toEqual({
        field: `shelf.${part}`,
        message: sentence(say.sizes, `“${String(sizes)}”`, where),
      });
    expect(shelf({ [part]: undefined }).message).toBe(sentence(say.sizes, 'nothing', where));
    expect(valueIn(read({ shelf: { ...setup.shelf, [part]: [0.5] } })).shelf).toMatchObject({ [part]: [0.5] });
  });
  it.each(['balanceReadabilityG', 'balanceMaxG'])('has a mass above zero in %s', (part) => {
    for (const mass of [0, -1, '0.01', Number.NaN])
      expect(shelf({ [part]: mass })).toEqual({
        field: `shelf.${part}`,
        message: sentence(say.balance, `“${String(mass)}”`),
      });
    expect(valueIn(read({ shelf: { ...setup.shelf, [part]: 0.002 } })).shelf).toMatchObject({ [part]: 0.002 });
  });
});

describe('classes and teams', () => {
  const teams = (count: number, from = 0) => Array.from({ length: count }, (_, index) => `T${from + index}`);

  it('need a name each, and at least one team', () => {
    expect(classes({ name: ' ', teams: ['Otter'] })).toEqual({
      field: 'classes',
      message: sentence(say.className, 'a blank'),
    });
    for (const given of [7, null, [['Fern', 'Otter']]])
      expect(classes(given).message).toBe(sentence(say.className, 'a blank'));
    for (const given of [{ name: 'Fern', teams: [] }, { name: 'Fern' }, { name: 'Fern', teams: 'Otter' }])
      expect(classes(given)).toEqual({ field: 'classes', message: sentence(say.noTeams, 'none', 'Fern') });
    expect(classes({ name: 'Fern', teams: ['Otter', ' '] })).toEqual({
      field: 'classes',
      message: sentence(say.teamName, 'a blank', 'Fern'),
    });
    expect(classes()).toEqual({ field: 'classes', message: sentence(say.noClasses, 'none') });
  });
  it('need different names: a class also in capital letters, a team within its class', () => {
    const fern = { name: 'Fern', teams: ['Otter'] };
    expect(classes(fern, { name: 'FERN', teams: ['Newt'] })).toEqual({
      field: 'classes',
      message: sentence(say.classTwice, '“FERN”'),
    });
    expect(classes({ name: 'FERN', teams: ['Newt'] }, fern).message).toBe(sentence(say.classTwice, '“Fern”'));
    expect(classes({ name: 'Fern', teams: ['Otter', 'Newt', ' Otter'] })).toEqual({
      field: 'classes',
      message: sentence(say.teamTwice, '“Otter”', 'Fern'),
    });
    expect(read({ classes: [fern, { name: 'Moss', teams: ['Otter', 'otter'] }] }).ok).toBe(true);
  });
  it('are at most two hundred teams in all', () => {
    expect(
      read({
        classes: [
          { name: 'Fern', teams: teams(100) },
          { name: 'Moss', teams: teams(100) },
        ],
      }).ok,
    ).toBe(true);
    expect(classes({ name: 'Fern', teams: teams(100) }, { name: 'Moss', teams: teams(101) })).toEqual({
      field: 'classes',
      message: sentence(say.tooMany, '201'),
    });
  });
});

describe('what the sidebar begins with', () => {
  it('is one class of six teams with the decimal mark of the file, and would be taken as it is', () => {
    const first = firstSetup('comma');
    expect(first.classes).toEqual([{ name: deskWords.classNumber(1), teams: deskWords.teamNamesToStart.slice(0, 6) }]);
    expect(first).toMatchObject({ ownNumbers: true, shelf: defaultShelf });
    expect(first.settings).toEqual({ ...defaultSettings, activity: first.activity, 'decimal mark': 'comma' });
    expect(valueIn(readSetup(first))).toEqual(first);
    expect(firstSetup('point').settings['decimal mark']).toBe('point');
  });
});
