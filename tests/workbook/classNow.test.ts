import { describe, expect, it } from 'vitest';
import { remarks } from '../../src/lab/texts/feedback.ts';
import { classNow } from '../../src/workbook/classNow.ts';
import { type BlockReading, notYetKnown, type StepReading } from '../../src/workbook/readClassSheet.ts';
import { words } from '../../src/workbook/words.ts';

const minute = 60_000;
const now = 100 * minute;
const titles = new Map([
  ['a', 'First row'],
  ['b', 'Second row'],
  ['words', 'In your own words'],
]);

const step = (id: string, found: Partial<StepReading> = {}): StepReading => ({
  row: 1,
  key: 'k',
  step: id,
  entry: '',
  check: 'blank',
  lookAt: '',
  hint: '',
  helpWanted: 0,
  who: '',
  tries: 0,
  lastEntry: undefined,
  ...found,
});
const block = (team: string, ...steps: StepReading[]): BlockReading => ({
  key: team.toLowerCase(),
  team,
  who: '',
  whoColumn: 9,
  checkColumn: 5,
  headingRow: 1,
  closingRow: 9,
  known: true,
  steps: [...steps, step('words', { check: '' })],
});
const seen = (...blocks: BlockReading[]) =>
  classNow({
    reading: { blocks, linkRows: 1 },
    titles,
    told: ['words'],
    extension: 'And if the flask were twice as big?',
    now,
  });
const wrong = { entry: '64', check: 'not yet', lookAt: 'Your value matches one thing. Which unit?' };

describe('classNow', () => {
  it('says nothing of a team that is under way', () => {
    expect(
      seen(block('Otter', step('a', { check: 'on target', entry: '1', lastEntry: now - minute }), step('b'))),
    ).toEqual({
      talkFirst: [],
      sayToClass: '',
      notYetKnown: 0,
    });
  });
  it('puts a call for help first, then the same question twice, many tries, a long silence, an open question and work that is done', () => {
    const { talkFirst } = seen(
      block('Done', step('a', { check: 'on target' }), step('b', { check: 'on target' })),
      block('Open', step('a', wrong), step('b')),
      block('Quiet', step('a', { check: 'on target', lastEntry: now - 9 * minute }), step('b')),
      block('Many', step('a', { ...wrong, tries: 4 })),
      block('Twice', step('a', wrong), step('b', { ...wrong, entry: '65' })),
      block('Asks', step('a'), step('b', { helpWanted: 2 })),
    );
    expect(talkFirst).toEqual([
      { team: 'Asks', reason: 'Asked for help, level 2, at Second row.' },
      {
        team: 'Twice',
        reason: 'First row: the value matches one thing. The same question twice, at First row and Second row.',
      },
      { team: 'Many', reason: 'First row: the value matches one thing. At least 4 tries at First row.' },
      { team: 'Quiet', reason: 'Second row: still blank. Nothing new for 9 minutes.' },
      { team: 'Open', reason: 'First row: the value matches one thing.' },
      {
        team: 'Done',
        reason: 'Everything on target: ready for more. And if the flask were twice as big?',
        ready: true,
      },
    ]);
  });
  it('puts the team with more tries, or the longer silence, before another for whom the same is said', () => {
    const many = (tries: number) => step('a', { ...wrong, tries });
    const quiet = (minutes: number) => step('a', { check: 'on target', lastEntry: now - minutes * minute });
    const found = seen(
      block('Three', many(3)),
      block('Five', many(5)),
      block('Ten', quiet(10), step('b')),
      block('Twenty', quiet(20), step('b')),
    );
    expect(found.talkFirst.map(({ team }) => team)).toEqual(['Five', 'Three', 'Twenty', 'Ten']);
  });
  it('does not speak of silence once no team has typed for as long as a class takes to be over', () => {
    const last = (minutes: number) => step('a', { check: 'on target', lastEntry: now - minutes * minute });
    const quiet = [{ team: 'Otter', reason: expect.stringContaining('Nothing new for 25 minutes.') }];
    expect(seen(block('Otter', last(25), step('b')), block('Heron', last(19), step('b'))).talkFirst).toEqual([
      ...quiet,
      { team: 'Heron', reason: expect.stringContaining('Nothing new for 19 minutes.') },
    ]);
    expect(seen(block('Otter', last(25), step('b')), block('Heron', last(2), step('b'))).talkFirst).toEqual(quiet);
    expect(seen(block('Otter', last(25), step('b')), block('Heron', last(20), step('b'))).talkFirst).toEqual([]);
  });
  it('does not speak of silence since a lesson before', () => {
    const days = (before: number) => step('a', { check: 'on target', lastEntry: now - before * 24 * 60 * minute });
    expect(seen(block('Otter', days(7), step('b')), block('Heron', days(1), step('b', wrong))).talkFirst).toEqual([
      { team: 'Heron', reason: expect.not.stringMatching(/minutes/) },
    ]);
  });
  it('does not speak of help or tries on a row that is on target by now', () => {
    expect(
      seen(block('Otter', step('a', { check: 'on target', tries: 6, helpWanted: 3 }), step('b'))).talkFirst,
    ).toEqual([]);
  });
  it('says to everybody what two teams or more have before them', () => {
    expect(seen(block('One', step('a', wrong))).sayToClass).toBe('');
    expect(seen(block('One', step('a', wrong)), block('Two', step('b', wrong))).sayToClass).toBe(
      `2 teams see this now: ${wrong.lookAt}`,
    );
  });
  it('takes two different slips of a team for no question that comes twice', () => {
    const other = { ...wrong, lookAt: 'Your value matches another thing. Which one?' };
    const reasonOf = (second: typeof wrong) =>
      seen(block('One', step('a', wrong), step('b', second))).talkFirst.map(({ reason }) => reason)[0];
    expect(reasonOf(other)).not.toBe(reasonOf(wrong));
    expect(reasonOf(other)).toBe(seen(block('One', step('a', wrong))).talkFirst[0]?.reason);
  });
  it('takes neither the general sentence nor a call to wait for the same question', () => {
    const general = [remarks.notYet, remarks.farFromTarget];
    for (const lookAt of general) {
      const open = { ...wrong, lookAt };
      const { talkFirst, sayToClass } = seen(
        block('One', step('a', open), step('b', open)),
        block('Two', step('a', open), step('b', open)),
      );
      expect(sayToClass).toBe('');
      expect(talkFirst.map(({ reason }) => reason)).toEqual(['First row: not right yet.', 'First row: not right yet.']);
    }
  });
  it('names the first row that is not right and its slip, whatever else is true of the team', () => {
    const cautions = step('tick', { check: 'not yet', entry: 'yes' });
    const waits = { entry: '5', check: 'not yet', lookAt: remarks.waitForTick.replace('{row}', 'Aim and cautions') };
    const rows = [cautions, step('b', waits), step('a', wrong), step('c', { helpWanted: 3 })];
    const { talkFirst } = classNow({
      reading: { blocks: [block('Heron', ...rows)], linkRows: 1 },
      titles: new Map([...titles, ['tick', 'Aim and cautions'], ['c', 'Third row']]),
      told: ['words'],
      ticked: ['tick'],
      extension: '',
      now,
    });
    expect(talkFirst).toEqual([
      {
        team: 'Heron',
        reason:
          'First row: the value matches one thing. Asked for help, level 3, at Third row. The cautions are still to read.',
      },
    ]);
  });
  it.each([
    [{ check: 'close', entry: '1' }, 'First row: close.'],
    [{ check: 'follows', entry: '1' }, 'First row: right method, an earlier row needs a look.'],
    [{ check: 'unreadable', entry: 'x' }, 'First row: what was typed cannot be read.'],
  ])('says what is the matter with a row that has %j', (found, words) => {
    const { talkFirst } = seen(block('Otter', step('a', found), step('b', { helpWanted: 1 })));
    expect(talkFirst[0]?.reason).toBe(`${words} Asked for help, level 1, at Second row.`);
  });
  it('does not blame an entry that cannot be checked for want of a number of the Plan', () => {
    const bad = words.classNow.badGiven({ cell: 'F42', name: 'flask', typed: 'about 100' });
    const { talkFirst } = classNow({
      reading: { blocks: [block('Bad', step('a', { check: 'unreadable', entry: '200' }))], linkRows: 1 },
      titles,
      told: ['words'],
      badGivens: new Map([['bad', bad]]),
      extension: '',
      now,
    });
    expect(talkFirst[0]?.reason).toBe(`${bad} First row: cannot be checked yet.`);
  });
  it('puts a number of the Plan that cannot be used before everything, with its cell', () => {
    const bad = words.classNow.badGiven({ cell: 'F42', name: 'molarity', typed: 'about 0.3' });
    const { talkFirst } = classNow({
      reading: { blocks: [block('Asks', step('a', { helpWanted: 3 })), block('Bad', step('a', wrong))], linkRows: 1 },
      titles,
      told: ['words'],
      badGivens: new Map([['bad', bad]]),
      extension: '',
      now,
    });
    expect(talkFirst.map(({ team, reason }) => [team, reason])).toEqual([
      ['Bad', `${bad} First row: the value matches one thing.`],
      ['Asks', 'Asked for help, level 3, at First row.'],
    ]);
  });
  it('sends nobody to a team whose class is closed', () => {
    const open = { entry: '5', check: 'next time', tries: 7, helpWanted: 2, lastEntry: now - 60 * minute };
    expect(seen(block('Otter', step('a', open), step('b', { check: 'next time' }))).talkFirst).toEqual([]);
  });
  it('counts what is not known yet and takes it for neither right nor wrong', () => {
    const found = seen(
      block('Otter', step('a', { check: notYetKnown, entry: '5', tries: 7 }), step('b', { check: 'on target' })),
    );
    expect(found.notYetKnown).toBe(1);
    expect(found.talkFirst).toEqual([]);
  });
});
