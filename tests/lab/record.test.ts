import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { activityById } from '../../src/lab/lesson/activities.ts';
import type { Activity } from '../../src/lab/lesson/activity.ts';
import { classFacts, type StepDay, type TeamDay } from '../../src/lab/record/classFacts.ts';
import { dayText } from '../../src/lab/record/dayText.ts';
import { mergedWords } from '../../src/lab/record/mergedWords.ts';
import { nameIn } from '../../src/lab/record/nameIn.ts';
import { slipSaid } from '../../src/lab/record/slipSaid.ts';
import { workedWith } from '../../src/lab/record/workedWith.ts';
import { remarks, type SlipId, slipTexts } from '../../src/lab/texts/feedback.ts';
import { slipInRecord, slipsInRecord } from '../../src/lab/texts/slipInRecord.ts';

const step = (title: string, found: Partial<StepDay> = {}): StepDay => ({
  title,
  scored: true,
  check: 'blank',
  entry: '',
  lookAt: '',
  tries: 0,
  helpWanted: 0,
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
  classFacts({
    day: '2026-03-02',
    className: 'Fern class',
    activity: 'A dilution',
    aim: 'Dilute.',
    substance: 'potassium bromide, KBr',
    concentrations: 'stock molarity 0.300 mol/L',
    teams,
    poll: '',
  });

describe('classFacts', () => {
  const day = facts([
    team('Otter', [right('Molar mass'), right('Mass', 5)]),
    team('Heron', [right('Molar mass'), wrong('Mass', 4)]),
    team('Newt', [right('Molar mass'), wrong('Mass', 1)]),
    team('Pike', [step('Molar mass'), step('Mass')], { absent: true }),
  ]);
  it('has everybody there who is not marked absent, counts people who were missing, and who finished', () => {
    expect(day.entry.present).toBe('3 of 4 teams, 1 team absent');
    const [quiet, missing] = [team('Newt', [step('Mass')]), { absentMembers: ['Ana', 'Ben'] }];
    expect(facts([quiet, team('Otter', [right('Mass')], missing)]).entry.present).toBe('2 of 2 teams, 2 people absent');
    expect(day.entry.finished).toBe('1 of 4 teams');
    expect(day.names).toEqual({
      present: ['Otter', 'Heron', 'Newt'],
      absent: ['Pike'],
      finished: ['Otter'],
      absentMembers: [],
    });
  });
  it('says what was hard, in words for somebody who was not there, and where teams go on', () => {
    expect(day.entry.hard).toBe(
      '2 teams left the volume in mL where litres belong. Most attempts: “Mass”, 10 in 3 teams.',
    );
    expect(day.entry.next).toBe('2 teams continue at “Mass”. 1 team was absent and goes on in its own rows.');
  });
  it('says what went well: who finished, who found a slip without help, and what was right at once', () => {
    const helped = { ...right('Mass', 3), helpWanted: 2 };
    const [finds, asks] = [
      team('Otter', [right('Molar mass'), right('Mass', 2)]),
      team('Heron', [right('Molar mass'), helped]),
    ];
    expect(day.entry.wentWell).toBe(
      '1 team finished every step. 1 team found a slip of its own and put it right without help, at “Mass”. Right at the first try in every team: Molar mass.',
    );
    expect(facts([finds, finds, asks]).entry.wentWell).toBe(
      'All 3 teams finished every step. 2 teams found slips of their own and put them right without help, most at “Mass”. Right at the first try in every team: Molar mass.',
    );
    expect(facts([asks, team('Newt', [step('Molar mass'), step('Mass')])]).entry.wentWell).toBe(
      '1 team finished every step.',
    );
    expect(facts([team('Newt', [step('Mass')])]).entry.wentWell).toBe('');
  });
  it('names the row where no slip is known, once for a team, and none that only waits for another', () => {
    const open = (title: string, lookAt: string) => step(title, { check: 'not yet', entry: '2', lookAt });
    const waits = open('Weighed', remarks.waitForRow.replace('{row}', 'Mass'));
    expect(
      facts([team('Otter', [open('Mass', remarks.notYet), open('Moles', remarks.notYet), waits])]).entry.hard,
    ).toBe('1 team has no right value yet for “Mass”.');
    expect(facts([team('Otter', [waits])]).entry.hard).toBe('');
  });
  it('names the rows where most teams go on first, in one sentence', () => {
    const at = (title: string) => team('Otter', [right('Molar mass'), step(title)]);
    expect(facts([at('Moles'), at('Mass'), at('Mass')]).entry.next).toBe('2 teams continue at “Mass”, 1 at “Moles”.');
  });
  it('says who has the cautions still to read', () => {
    const unread = team('Otter', [step('Aim and cautions', { ofCautions: true }), right('Molar mass')]);
    expect(facts([unread, team('Heron', [step('Mass')])]).entry.next).toBe(
      '1 team continues at “Mass”. 1 team still has to read the cautions.',
    );
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

describe('slipSaid', () => {
  const all = Object.entries(slipTexts) as [
    SlipId,
    { fits: string; ask: string; in?: Record<string, { fits: string; ask: string }> },
  ][];
  const said = (words: string, { fits, ask }: { fits: string; ask: string }) =>
    words.replace('{fits}', fits).replace('{ask}', ask);
  it('reads every slip back from every wording it has, and has words for each in the record', () => {
    for (const [id, text] of all) {
      for (const one of [text, ...Object.values(text.in ?? {})])
        expect(slipSaid(said(remarks.oneFits, one))).toEqual({ words: one.fits, slip: id });
      expect(slipInRecord(id)).toMatch(/^[a-z][^.“”]+[a-z]$/);
      // Words of its own, though one that has none is told by what it fits.
      expect(slipsInRecord[id]).toBe(slipInRecord(id));
    }
    expect(new Set(all.map(([id]) => slipInRecord(id))).size).toBe(all.length);
  });
  it('says what is asked where several slips match, without taking one of them', () => {
    expect(slipSaid(remarks.severalFit.replace('{ask}', 'Which? How?'))).toEqual({ questions: 'Which? How?' });
  });
  it.each([remarks.notYet, remarks.signOnly, remarks.onTarget, ''])('finds none in “%s”', (lookAt) => {
    expect(slipSaid(lookAt)).toBeUndefined();
  });
});

describe('workedWith', () => {
  const activity = (id: string): Activity => {
    const found = activityById(id);
    if (found === undefined) throw new Error(`Expected the activity ${id}.`);
    return found;
  };
  const worked = (id: string, ...givens: readonly Record<string, string>[]) =>
    workedWith({ activity: activity(id), teams: givens.map((one) => ({ givens: one })), decimalMark: 'point' });
  it('tells the span of what teams were given, as it was typed, with what cannot be read left out', () => {
    const teams = ['0.400', '0.45', '0.380', 'about 0.3'].map((stock) => ({
      formula: 'CuSO4·5H2O',
      'stock molarity': stock,
      'target molarity': '0.120',
    }));
    expect(worked('stock and dilution', ...teams)).toEqual({
      substance: 'copper(II) sulfate pentahydrate, CuSO4·5H2O',
      concentrations: 'stock molarity 0.380 to 0.45 mol/L, target molarity 0.120 mol/L',
    });
  });
  it('tells the percent of a bottle and no purity, and leaves a unit that was typed', () => {
    const givens = { formula: 'HCl', 'mass percent': '37.2', density: '1.18', 'target molarity': '500 mmol/L' };
    expect(worked('concentrated reagent', givens)).toMatchObject({
      concentrations: 'mass percent 37.2 %, target molarity 500 mmol/L',
    });
    expect(worked('stock and dilution', { formula: 'XyZ', purity: '98' })).toEqual({
      substance: 'XyZ',
      concentrations: '',
    });
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
        'Fern class: A dilution\nAim: Dilute.\nSubstance: potassium bromide, KBr\nConcentrations: stock molarity 0.300 mol/L\nPresent: 1 of 2 teams, 1 team absent\nFinished: 1 of 2 teams\nWhat went well: The team finished every step. Right at the first try in every team: Molar mass.\nNext time: 1 team was absent and goes on in its own rows.',
        'Moss class: A dilution\nAim: Dilute.\nSubstance: potassium bromide, KBr\nConcentrations: stock molarity 0.300 mol/L\nPresent: 1 of 2 teams, 1 team absent\nFinished: 1 of 2 teams\nWhat went well: The team finished every step. Right at the first try in every team: Molar mass.\nNext time: 1 team was absent and goes on in its own rows.\nIn your own words: A calm hour.',
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
