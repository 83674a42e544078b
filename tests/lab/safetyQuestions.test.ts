import { describe, expect, it } from 'vitest';
import { cautionsAt } from '../../src/chemistry/cautionsAt.ts';
import { drainAdvice } from '../../src/chemistry/drainAdvice.ts';
import { listedHazards } from '../../src/chemistry/listedHazards.ts';
import { readFormula } from '../../src/chemistry/readFormula.ts';
import { rightSafetyOption, safetyLetters, safetyQuestion } from '../../src/lab/bench/safetyQuestion.ts';
import { judgeSafety } from '../../src/lab/judging/judgeSafety.ts';
import { judgeTeam } from '../../src/lab/judging/judgeTeam.ts';
import { teamChecks } from '../../src/lab/judging/teamChecks.ts';
import { withSafetySteps } from '../../src/lab/lesson/activities/safetySteps.ts';
import { activityById } from '../../src/lab/lesson/activities.ts';
import type { Activity, SafetyStep } from '../../src/lab/lesson/activity.ts';
import { readLessonSettings } from '../../src/lab/lesson/lessonSettings.ts';
import { molesPerLitre } from '../../src/measurement/quantity.ts';
import { rightEntries } from './rightEntries.ts';

const plain = activityById('solution from a solid') as Activity;
const solid = withSafetySteps(plain);
const asked = solid.steps.filter((step): step is SafetyStep => step.kind === 'safety');
const [splash, waste] = asked as [SafetyStep, SafetyStep];
const settings = readLessonSettings([]);
const strengths = ['0.05', '6'];
const givensOf = (formula: string, molarity = '0.100') => ({ formula, molarity, flask: '250', ion: '' });
const rightFor = (step: SafetyStep, formula: string, molarity?: string) =>
  rightSafetyOption(step, { givens: givensOf(formula, molarity), decimalMark: 'point' });
/** What each letter is answered with. */
const replies = (step: SafetyStep, givens: Readonly<Record<string, string>>) =>
  safetyLetters(step, { step: step.id, key: givens.key ?? '' }).map(({ letter, item }) => ({
    item,
    letter,
    ...judgeSafety(step, letter, { givens, settings }),
  }));

describe('the two questions before the bench', () => {
  it('answer a letter that is not right with the question of its option', () => {
    for (const step of asked) {
      const wrong = replies(step, givensOf('NaOH')).filter(({ status }) => status !== 'on target');
      expect(wrong).toHaveLength(3);
      for (const { item, status, lookAt } of wrong) expect([status, lookAt]).toEqual(['not yet', item.ask]);
    }
  });
  it.each(listedHazards().map((one) => [one.name, one] as const))('have one right answer each for %s', (_, one) => {
    const [text = ''] = one.spellings;
    const formula = readFormula(text);
    if (!formula.ok) throw new Error(text);
    for (const molarity of strengths) {
      const forms = [
        { substance: true, cautions: cautionsAt(formula.value, 'undiluted') },
        { substance: false, cautions: cautionsAt(formula.value, { molarity: molesPerLitre(Number(molarity)) }) },
      ];
      const ids = asked.map((step) => {
        const judged = replies(step, { ...givensOf(text, molarity), key: `c1-t${molarity}` });
        const right = judged.filter(({ status }) => status === 'on target');
        expect([step.id, molarity, right.length, judged.length]).toEqual([step.id, molarity, 1, 4]);
        return right[0]?.item.id;
      });
      // Harm that the data name for the bottle or this strength, or do not rule out there.
      const codes = forms.flatMap(({ cautions }) => [...cautions.codes, ...cautions.unknownCodes]);
      const burns = codes.some((code) => code === 'H314' || code === 'H318');
      const isOpen = forms.some(({ cautions }) => cautions.verdict === 'unsure');
      if (burns || isOpen) expect([molarity, ids[0]]).toEqual([molarity, 'serious']);
      if (ids[0] === 'mild') expect(codes.filter((code) => /^H31[0-8]$/.test(code) && code !== 'H315')).toEqual([]);
      const drain = forms.every(
        (_form, place) =>
          drainAdvice(formula.value, place === 0 ? 'undiluted' : { molarity: molesPerLitre(Number(molarity)) })
            .goesTo === 'drain',
      );
      expect([molarity, ids[1] === 'drain']).toEqual([molarity, drain]);
    }
  });

  // From data sheets: what a splash of it is labelled with, and the metal it is collected for.
  it.each([
    ['NaOH', '0.1', 'serious', 'waste beaker'],
    ['CuSO4·5H2O', '0.100', 'serious', 'metal'],
    ['AgNO3', '0.100', 'serious', 'metal'],
    ['KBr', '0.300', 'mild', 'drain'],
    ['NaCl', '1.00', 'mild', 'drain'],
    ['NiSO4·6H2O', '0.100', 'through skin', 'metal'],
    ['NH4SCN', '0.100', 'serious', 'waste beaker'],
    // Nobody here knows these; the second has a metal that is collected.
    ['C6H5COCl', '0.1', 'serious', 'waste beaker'],
    ['Ag2C2O4', '0.1', 'serious', 'metal'],
    ['', '0.1', 'serious', 'waste beaker'],
    ['Xx', '0.1', 'serious', 'waste beaker'],
  ])('%s at %s mol/L', (formula, molarity, atSkin, goesTo) => {
    expect([rightFor(splash, formula, molarity), rightFor(waste, formula, molarity)]).toEqual([atSkin, goesTo]);
  });

  it('go by the strongest form that is handled, and by a comma where the lesson has one', () => {
    const { steps } = withSafetySteps(activityById('dilution') as Activity);
    const step = steps.find((one): one is SafetyStep => one.id === 'splash');
    const right = (stock: string, decimalMark: 'point' | 'comma' = 'point') =>
      step && rightSafetyOption(step, { givens: { formula: 'HCl', 'stock molarity': stock }, decimalMark });
    // 25 % of HCl burns, 10 % irritates: CLP Annex VI, index 017-002-01-X.
    expect([right('10'), right('0.5'), right('0,5', 'comma')]).toEqual(['serious', 'serious', 'serious']);
    expect(asked.map(({ id }) => id)).toEqual(['splash', 'waste']);
  });

  it('answer a wrong choice with a question or with where to look, never with the answer', () => {
    for (const step of asked) {
      const { options } = safetyQuestion(step);
      for (const { id, ask } of options) {
        expect(ask, id).toMatch(/\?$|caution row/);
        expect(ask, id).not.toMatch(/\d|\b[a-d]\)/);
        for (const other of options) if (other.id !== id) expect(ask).not.toContain(other.text);
      }
      for (const { formula } of [{ formula: 'NaOH' }, { formula: 'KBr' }, { formula: 'NiSO4·6H2O' }]) {
        const all = replies(step, givensOf(formula));
        const right = all.find(({ status }) => status === 'on target');
        for (const { status, lookAt } of all) if (status !== 'on target') expect(lookAt).not.toBe(right?.item.right);
        expect(right?.lookAt).toMatch(/teacher|[Ss]taff|local rules/);
      }
    }
  });

  it('have letters of their own for every team, and the same options whatever is right', () => {
    const lettersOf = (key: string) => safetyLetters(splash, { step: 'splash', key }).map(({ item }) => item.id);
    const orders = ['c1-t1', 'c1-t2', 'c1-t3', 'c1-t4', 'c1-t5', 'c1-t6'].map((key) => lettersOf(key).join());
    expect(new Set(orders).size).toBeGreaterThan(2);
    for (const order of orders) expect(order.split(',').sort()).toEqual(['mild', 'serious', 'through skin', 'wait']);
    const places = Array.from({ length: 200 }, (_, team) => lettersOf(`c1-t${team}`).indexOf('serious'));
    for (const place of [0, 1, 2, 3]) expect(places.filter((one) => one === place).length).toBeGreaterThan(25);
  });
});

describe('the bench', () => {
  const givens: Readonly<Record<string, string>> = {
    formula: 'NaOH',
    molarity: '0.250',
    flask: '250',
    ion: 'Na+',
    key: 'c1-t2',
  };
  const letter = (step: SafetyStep, id: string) =>
    safetyLetters(step, { step: step.id, key: givens.key ?? '' }).find(({ item }) => item.id === id)?.letter ?? '';
  const right = { splash: letter(splash, 'serious'), waste: letter(waste, 'waste beaker') };
  const entries = { ...rightEntries(plain, givens), ...right };
  const rowsWith = (typed: Readonly<Record<string, string>>, rows = solid.steps.map(({ id }) => id)) => {
    const judged = judgeTeam({
      givenNames: Object.keys(givens),
      givenValues: Object.values(givens),
      settings: [['activity', plain.id]],
      steps: rows,
      entries: rows.map((id) => ({ ...entries, ...typed })[id] ?? ''),
    });
    return Object.fromEntries(rows.map((id, place) => [id, judged[place]]));
  };

  it('opens once the cautions are ticked and both answers are right', () => {
    const open = rowsWith({});
    for (const id of ['splash', 'waste', 'procedure', 'mass weighed'])
      expect([id, open[id]?.status]).toEqual([id, 'on target']);
    for (const [id, title, wrong] of [
      ['splash', 'If it splashes', letter(splash, 'wait')],
      ['waste', 'Where it goes', letter(waste, 'drain')],
    ] as const) {
      for (const typed of ['', wrong, 'everything', 'e']) {
        const held = rowsWith({ [id]: typed });
        for (const bench of ['procedure', 'mass weighed']) {
          expect([id, typed, held[bench]?.status, held[bench]?.lookAt]).toEqual([
            id,
            typed,
            'not yet',
            `Wait before you do this. Check “${title}” first: read the cautions, then answer there.`,
          ]);
        }
        // What is worked out waits for nobody.
        expect(held['stock made']?.status).toBe('on target');
      }
    }
    expect(rowsWith({ 'cautions read': '', splash: '' }).procedure?.lookAt).toContain('“Aim and cautions”');
  });

  it('is as it was where the block has no such rows', () => {
    const rows = rowsWith(
      {},
      plain.steps.map(({ id }) => id),
    );
    for (const { id, kind } of plain.steps)
      if (kind !== 'told') expect([id, rows[id]?.status]).toEqual([id, 'on target']);
  });

  it('reads a letter with its reason, and gives help', () => {
    const checks = teamChecks({
      givenNames: Object.keys(givens),
      givenValues: Object.values(givens),
      settings: [['activity', plain.id]],
      steps: ['splash', 'waste'],
      entries: [`(${right.splash.toUpperCase()}), since it burns`, 'x y'],
      helpWanted: ['1', '3'],
    });
    expect(checks[0]).toMatchObject({ check: 'on target', hint: 'Who might be hurt at the bench, and by what?' });
    expect(checks[0]?.lookAt).toMatch(/^Yes\. Rinse at once/);
    expect(checks[1]).toMatchObject({
      check: 'unreadable',
      lookAt: expect.stringContaining('Write one letter, a to d.'),
    });
    expect(checks[1]?.hint).toMatch(/what to wear/);
  });
});
