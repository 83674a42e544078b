import { describe, expect, it } from 'vitest';
import { letterOfOption } from '../../src/lab/bench/letteredOptions.ts';
import { lettersInOrder } from '../../src/lab/bench/orderedActions.ts';
import { questionByName } from '../../src/lab/bench/questions.ts';
import { hintForStep } from '../../src/lab/hints/hintForStep.ts';
import { teamChecks } from '../../src/lab/judging/teamChecks.ts';
import { activityById } from '../../src/lab/lesson/activities.ts';
import { concentratedReagents } from '../../src/lab/lesson/concentratedReagents.ts';
import { slipTexts } from '../../src/lab/texts/feedback.ts';
import { layoutVersion } from '../../src/workbook/layout.ts';

const activity = activityById('concentrated reagent');
if (activity === undefined) throw new Error('no concentrated reagent');
const ids = activity.steps.map(({ id }) => id);

/** 25 % ammonia of 0.91 g/mL is 13.4 mol/L, so 250 mL of 0.500 mol/L take 9.36 mL and 241 mL of water; worked by hand. */
const givens = {
  formula: 'NH3',
  'mass percent': '25',
  density: '0.910',
  'target molarity': '0.500',
  'target volume': '250',
};

function rows(entries: Readonly<Record<string, string>>, own: Partial<typeof givens> = {}) {
  const named = { ...givens, ...own };
  const checked = teamChecks({
    givenNames: Object.keys(named),
    givenValues: Object.values(named),
    settings: [
      ['activity', 'concentrated reagent'],
      ['layout', String(layoutVersion)],
    ],
    steps: ids,
    entries: ids.map((id) => entries[id] ?? ''),
  });
  return Object.fromEntries(ids.map((id, at) => [id, checked[at]]));
}

const question = questionByName('dilute acid');
const everyReply = (formula: string): readonly string[] =>
  [question.right, ...question.others].map(
    (option) => rows({ particles: letterOfOption(question.name, option) }, { formula }).particles?.lookAt ?? '',
  );

describe('a solution from a concentrated base', () => {
  it('is spoken of as a base, and one from an acid as an acid', () => {
    for (const { formula, kind } of concentratedReagents()) {
      const said = everyReply(formula).join(' ');
      expect([formula, /\bacid\b/.test(said), /\bbase\b/.test(said)]).toEqual([
        formula,
        kind === 'acid',
        kind === 'base',
      ]);
    }
    expect(everyReply('NH3')).toContain(
      'Yes: dilute says how crowded. Strong and weak say how much of a base turns into hydroxide ions.',
    );
    // Neither of the two, and a formula that nobody can read.
    for (const formula of ['H2O2', 'Xx']) expect(everyReply(formula).join(' ')).not.toMatch(/\b(?:acid|base)\b/);
  });

  it('has no title, text or hint that calls what is in the bottle an acid', () => {
    for (const { id, title, shown, kind } of activity.steps) {
      const text = shown.map((piece) => (typeof piece === 'string' ? piece : 'NH3')).join('');
      const alone = `${title} ${text}`.replace(/acid or base/g, '');
      expect([id, alone]).toEqual([id, expect.not.stringMatching(/acid/i)]);
      for (const level of [1, 2, 3]) {
        const hint = hintForStep({ activity, stepId: id, level, givens, entries: {}, decimalMark: 'point' });
        expect([id, kind, hint]).toEqual([id, kind, expect.not.stringMatching(/acid/i)]);
      }
    }
    expect(activity.title).toContain('acid or base');
    expect(activity.aim).toContain('acid or base');
  });

  it('is put in order like an acid: water first', () => {
    const order = lettersInOrder('concentrated to flask');
    const inOrder = (letters: readonly string[]) =>
      rows({ 'cautions read': 'yes, NH3', procedure: letters.join(' ') }).procedure;
    expect(inOrder(order)?.check).toBe('on target');
    const [protect = '', water = '', reagent = '', ...rest] = order;
    const turned = inOrder([protect, reagent, water, ...rest]);
    expect(turned?.check).toBe('not yet');
    expect(turned?.lookAt).toContain('Stop: water goes in first');
  });
});

describe('a bottle that staff handle', () => {
  const before = { 'cautions read': 'yes, NH3', 'molar mass': '17.03', 'reagent molarity': '13.4' };

  it('is never one that a slip sends a student to', () => {
    const water = rows({ ...before, 'stock volume': '241' })['stock volume'];
    expect(water?.check).toBe('not yet');
    expect(water?.lookAt).toContain('the volume of water');
    expect(water?.lookAt).toContain('Which of the two liquids holds the solute?');
    expect(water?.lookAt).not.toContain('draw');
  });

  it('is not said to be in the flask before the water', () => {
    const right = { ...before, 'stock volume': '9.36' };
    const stock = rows({ ...right, 'water volume': '9.36' })['water volume'];
    expect(stock?.lookAt).toContain('How much of it is left for water?');
    const whole = rows({ ...right, 'water volume': '250' })['water volume'];
    expect(whole?.lookAt).toContain('What shares the flask with the water?');
    for (const row of [stock, whole]) expect(row?.lookAt).not.toMatch(/Once the stock is in|before the water goes in/);
  });

  it('has questions of its own only for slips that there are', () => {
    for (const step of activity.steps) {
      if (step.kind !== 'calculated') continue;
      for (const id of Object.keys(step.asks ?? {})) expect(Object.keys(slipTexts)).toContain(id);
    }
  });
});
