import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { classFacts, type StepDay, type TeamDay } from '../../src/lab/record/classFacts.ts';
import { dayText } from '../../src/lab/record/dayText.ts';
import { mergedWords } from '../../src/lab/record/mergedWords.ts';
import { nameIn } from '../../src/lab/record/nameIn.ts';

const step = (title: string, found: Partial<StepDay> = {}): StepDay => ({
  title,
  scored: true,
  check: 'blank',
  entry: '',
  lookAt: '',
  tries: 0,
  ...found,
});
const right = (title: string, tries = 1) => step(title, { check: 'on target', entry: '1', tries });
const slip = 'Your value matches a result with the volume left in mL. Which unit of volume goes with mol/L?';
const wrong = (title: string, tries: number) => step(title, { check: 'not yet', entry: '2', lookAt: slip, tries });
const team = (name: string, steps: readonly StepDay[], found: Partial<TeamDay> = {}): TeamDay => ({
  team: name,
  absent: false,
  absentMembers: [],
  here: steps.some(({ entry }) => entry !== ''),
  steps: [...steps, step('In your own words', { scored: false, check: '' })],
  ...found,
});
const facts = (teams: readonly TeamDay[]) =>
  classFacts({ day: '2026-03-02', className: 'Fern class', activity: 'A dilution', aim: 'Dilute.', teams, poll: '' });

describe('classFacts', () => {
  const day = facts([
    team('Otter', [right('Molar mass'), right('Mass', 5)]),
    team('Heron', [right('Molar mass'), wrong('Mass', 4)]),
    team('Newt', [right('Molar mass'), wrong('Mass', 1)]),
    team('Pike', [step('Molar mass'), step('Mass')], { absent: true }),
  ]);
  it('counts who was there and who finished, by what was entered', () => {
    expect(day.entry.present).toBe('3 of 4 teams, 1 team absent');
    expect(day.entry.finished).toBe('1 of 4 teams');
    expect(day.names).toEqual({
      present: ['Otter', 'Heron', 'Newt'],
      absent: ['Pike'],
      finished: ['Otter'],
      absentMembers: [],
    });
  });
  it('says what went well and what was hard in plain words', () => {
    expect(day.entry.wentWell).toBe('Every team on target: Molar mass.');
    expect(day.entry.hard).toBe(
      'Most attempts: Mass (10). To clear up: 2 teams gave a result with the volume left in mL.',
    );
    expect(day.entry.next).toBe('2 teams continue at “Mass”.');
  });
  it('has nothing to add where every team has finished', () => {
    expect(facts([team('Otter', [right('Molar mass')])]).entry).toMatchObject({ hard: '', next: '' });
  });
  it('takes a team that types after all for present, though it is marked absent', () => {
    expect(facts([team('Otter', [right('Molar mass')], { absent: true })]).names).toMatchObject({
      present: ['Otter'],
      absent: [],
    });
  });
  it('never writes the name of a team into the entry', () => {
    const name = fc.constantFrom('Zyxotter', 'Zyx 7', 'Zyx');
    const check = fc.constantFrom('on target', 'close', 'not yet', 'blank', 'not yet known', '');
    const row = fc.record({ check, entry: fc.constantFrom('', '1'), tries: fc.nat(9) });
    fc.assert(
      fc.property(fc.array(fc.tuple(name, fc.array(row, { maxLength: 4 }))), (teams) => {
        const made = teams.map(([called, rows]) =>
          team(
            called,
            rows.map((found, at) => step(`Row ${at}`, found)),
          ),
        );
        expect(JSON.stringify(facts(made).entry)).not.toContain('Zyx');
      }),
    );
  });
});

describe('dayText', () => {
  const { entry, names } = facts([
    team('Otter', [right('Molar mass')]),
    team('Pike', [step('Molar mass')], { absent: true }),
  ]);
  it('writes a paragraph for each class and leaves out lines without words', () => {
    const classes = [{ entry }, { entry: { ...entry, className: 'Moss class', notes: 'A calm\nhour.' } }];
    expect(dayText({ day: 'Monday 2 March 2026', classes })).toBe(
      [
        'Record of Monday 2 March 2026',
        'Fern class: A dilution\nAim: Dilute.\nPresent: 1 of 2 teams, 1 team absent\nFinished: 1 of 2 teams\nWhat went well: Every team on target: Molar mass.',
        'Moss class: A dilution\nAim: Dilute.\nPresent: 1 of 2 teams, 1 team absent\nFinished: 1 of 2 teams\nWhat went well: Every team on target: Molar mass.\nIn your own words: A calm hour.',
      ].join('\n\n'),
    );
  });
  it('names teams only where names are handed over', () => {
    expect(dayText({ day: 'today', classes: [{ entry }] })).not.toMatch(/Otter|Pike/);
    const named = dayText({ day: 'today', classes: [{ entry, names }] });
    expect(named).toContain('Present: 1 of 2 teams, 1 team absent (Otter)');
    expect(named).toContain('Absent: Pike');
  });
  it('says so where there was no class', () => {
    expect(dayText({ day: 'today', classes: [] })).toBe('Record of today\n\nNo class has entries today.');
  });
});

describe('mergedWords', () => {
  it.each([
    { base: 'a', there: 'a', typed: 'b', gives: 'b' },
    { base: 'a', there: 'b', typed: 'a', gives: 'b' },
    { base: 'a', there: 'b', typed: 'c', gives: 'b\nc' },
    { base: '', there: 'b', typed: 'b and c', gives: 'b and c' },
    { base: 'a', there: 'a', typed: '', gives: '' },
    { base: 'a', there: 'b', typed: '', gives: 'b' },
  ])('gives “$gives” for “$base”, “$there” and “$typed”', ({ gives, ...words }) => {
    expect(mergedWords(words)).toBe(gives);
  });
  it('never loses what both wrote', () => {
    const words = fc.string();
    fc.assert(
      fc.property(words, words, words, (base, there, typed) => {
        const merged = mergedWords({ base, there, typed });
        if (there !== base) expect(merged).toContain(there);
        if (typed !== base) expect(merged).toContain(typed);
      }),
    );
  });
});

describe('nameIn', () => {
  it.each([
    ['Otter was quick.', 'Otter'],
    ['quick (Otter)', 'Otter'],
    ['“Team 3” and', 'Team 3'],
    ['Zoë fragte', 'Zoë'],
  ])('finds a name in “%s”', (words, name) => {
    expect(nameIn(words, ['Heron', name])).toBe(name);
  });
  it('finds a short first name, and takes a single letter for none', () => {
    expect(nameIn('Cy was away.', ['Cy'])).toBe('Cy');
    expect(nameIn('Cyan ink', ['Cy'])).toBeUndefined();
  });
  it.each(['Otters swim', 'an otter', 'A dilution', ''])('finds none in “%s”', (words) => {
    expect(nameIn(words, ['Otter', 'A', ''])).toBeUndefined();
  });
});
