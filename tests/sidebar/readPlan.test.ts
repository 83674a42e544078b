import { describe, expect, it } from 'vitest';
import { draftOf, givensAfter, givensFor, keptDraft, type PlanDraft } from '../../src/sidebar/plan/planDraft.ts';
import { readPlan } from '../../src/sidebar/plan/readPlan.ts';
import { builtLesson, commaLesson, emptyLesson } from './scenes.ts';

const activity = builtLesson.activities[0];
const problemsOf = (part: Partial<PlanDraft>) => {
  const outcome = readPlan({ ...draftOf(builtLesson), ...part }, activity);
  return 'problems' in outcome ? outcome.problems : [];
};
const fieldsOf = (part: Partial<PlanDraft>) => problemsOf(part).map(({ field }) => field);

describe('readPlan', () => {
  it('sends back the plan of the sheet unchanged', () => {
    expect(readPlan(draftOf(builtLesson), activity)).toEqual({ setup: builtLesson.setup });
    expect(readPlan(draftOf(commaLesson), activity)).toEqual({ setup: commaLesson.setup });
  });
  it('sends what a sum means, in the unit of the given', () => {
    const givens = { ...builtLesson.setup.givens, flask: '1/4 L', purity: '98 %' };
    const outcome = readPlan({ ...draftOf(builtLesson), givens }, activity);
    expect('setup' in outcome && outcome.setup.givens).toMatchObject({
      flask: '250',
      purity: '98',
      'stock molarity': '0.400',
    });
  });
  it('names every field that needs another look, in the order of the page', () => {
    const givens = { ...builtLesson.setup.givens, formula: ' ', flask: '2.5 kg', 'target volume': '' };
    expect(fieldsOf({ givens, flasks: '', balanceReads: 'x' })).toEqual([
      'givens.formula',
      'givens.flask',
      'givens.target volume',
      'shelf.flasksMl',
      'shelf.balanceReadabilityG',
    ]);
  });
  it('points at a formula and an ion that cannot be', () => {
    const { givens } = builtLesson.setup;
    expect(problemsOf({ givens: { ...givens, formula: 'nacl', ion: '' } })).toEqual([
      { field: 'givens.formula', message: expect.stringContaining('Did you mean NaCl?') },
      { field: 'givens.ion', message: 'Type ion here.' },
    ]);
    expect(problemsOf({ givens: { ...givens, ion: 'Cl-' } })).toEqual([
      { field: 'givens.ion', message: expect.stringContaining('Br⁻') },
    ]);
    const sugar = readPlan(
      { ...draftOf(builtLesson), givens: { ...givens, formula: 'C12H22O11', ion: 'anything' } },
      activity,
    );
    expect('setup' in sugar && sugar.setup.givens.ion).toBe('');
  });
  it('wants names for classes and teams, each once', () => {
    const classes = [
      { name: '', teams: 'Basalt' },
      { name: 'Second', teams: 'Basalt\n\nbasalt' },
      { name: 'second ', teams: ' \n ' },
      { name: 'Third', teams: Array.from({ length: 41 }, (_, index) => `T${index}`).join('\n') },
    ];
    expect(fieldsOf({ classes })).toEqual([
      'classes.0.name',
      'classes.1.teams',
      'classes.2.name',
      'classes.2.teams',
      'classes.3.teams',
    ]);
    expect(problemsOf({ classes })[1]?.message).toContain('“basalt” is there twice');
    expect(fieldsOf({ classes: [] })).toEqual(['classes']);
  });
  it('accepts an allowance of nothing and refuses a seed that is no whole number', () => {
    const settings = { ...builtLesson.setup.settings, 'allowance for technique': '0 %' };
    expect(fieldsOf({ settings })).toEqual([]);
    expect(fieldsOf({ settings: { ...settings, seed: '1.5' } })).toEqual(['settings.seed']);
  });
});

describe('planDraft', () => {
  it('begins an empty file with one class of six teams', () => {
    const empty = { ...emptyLesson, setup: { ...emptyLesson.setup, classes: [] } };
    const [first, ...rest] = draftOf(empty).classes;
    expect(rest).toEqual([]);
    expect(first?.teams.split('\n')).toHaveLength(6);
  });
  it('keeps what was typed when the activity changes and fills in what is new', () => {
    const dilution = builtLesson.activities[1];
    if (!dilution) throw new Error('the scene has lost its second activity');
    expect(givensFor(dilution, { 'stock molarity': '0.7', flask: '100' })).toEqual({
      'stock molarity': '0.7',
      flask: '100',
      density: '1.05',
    });
  });
  it('starts with an ion of the substance, and with none where there are none', () => {
    if (!activity) throw new Error('the scene has lost its activity');
    expect(givensFor(activity, { formula: 'CaCl2' }).ion).toBe('Cl⁻');
    expect(givensFor(activity, { formula: 'C12H22O11' }).ion).toBe('');
  });
  it('makes room for a substance that the next activity takes, with an ion of it', () => {
    const { solutes } = builtLesson;
    if (!activity) throw new Error('the scene has lost its activity');
    const limited = {
      ...activity,
      givens: activity.givens.map((given) => (given.name === 'formula' ? { ...given, start: 'CuSO4·5H2O' } : given)),
      solutes: solutes.filter(({ formula }) => formula === 'CuSO4·5H2O'),
    };
    const from = { givens: builtLesson.setup.givens, otherFormula: false, solutes };
    const after = givensAfter(limited, from);
    expect(after.formula).toBe('CuSO4·5H2O');
    expect(after.ion).toMatch(/^(Cu²⁺|SO₄²⁻)$/);
    expect(givensAfter(activity, from)).toEqual(builtLesson.setup.givens);
    // What was typed as a formula of one's own stays; the host says if it will not do.
    expect(givensAfter(limited, { ...from, otherFormula: true }).formula).toBe('KBr');
  });
  it('takes a kept draft only if it has the shape of one', () => {
    const begun = draftOf(builtLesson);
    expect(keptDraft({ ...begun, flasks: '1' }, begun)?.flasks).toBe('1');
    for (const kept of [null, 3, 'x', {}, { ...begun, classes: [{}] }, { ...begun, flasks: 5 }]) {
      expect(keptDraft(kept, begun)).toBeUndefined();
    }
  });
});
