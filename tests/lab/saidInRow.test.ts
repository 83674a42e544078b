import { describe, expect, it } from 'vitest';
import { readFormula } from '../../src/chemistry/readFormula.ts';
import { pipetteToFlask } from '../../src/lab/bench/procedures/pipetteToFlask.ts';
import { solidToFlask } from '../../src/lab/bench/procedures/solidToFlask.ts';
import { procedureByName } from '../../src/lab/bench/procedures.ts';
import { safetyQuestion } from '../../src/lab/bench/safetyQuestion.ts';
import { withExitNumbers } from '../../src/lab/exit/exitNumbers.ts';
import { exitSteps } from '../../src/lab/exit/exitSteps.ts';
import { filled } from '../../src/lab/judging/feedbackText.ts';
import { saidInRow } from '../../src/lab/judging/saidInRow.ts';
import { teamChecks } from '../../src/lab/judging/teamChecks.ts';
import { withEvidenceSteps } from '../../src/lab/lesson/activities/evidenceSteps.ts';
import { withSafetySteps } from '../../src/lab/lesson/activities/safetySteps.ts';
import { activityById, allActivities } from '../../src/lab/lesson/activities.ts';
import type { Activity, OrderedStep, Step } from '../../src/lab/lesson/activity.ts';
import { readLessonSettings } from '../../src/lab/lesson/lessonSettings.ts';
import { numbersForTeams } from '../../src/lab/numbers/numbersForTeams.ts';
import { exitTexts } from '../../src/lab/texts/exit.ts';
import {
  decimalWords,
  figureWords,
  remarks,
  type SlipId,
  slipTexts,
  unreadableTexts,
} from '../../src/lab/texts/feedback.ts';
import { orderTexts } from '../../src/lab/texts/ordering.ts';
import { notALink } from '../../src/lab/texts/weighing.ts';
import { firstTeamGivens } from './firstTeam.ts';
import { startOf } from './otherActivities.ts';
import { rightEntries } from './rightEntries.ts';
import { saidWhateverIsTyped, type TeamAtTable } from './typedInRow.ts';

/** An activity with every row that a teacher may add, for a team with numbers of its own where some are given. */
function teamOf(base: Activity, own: Readonly<Record<string, string>> = {}): TeamAtTable {
  const activity = withEvidenceSteps(withSafetySteps(base));
  const givens = { ...firstTeamGivens(base), key: 'c1-t1', ...own };
  return { activity, givens, right: rightEntries(base, givens, 0.012) };
}
const known = (id: string): Activity => {
  const activity = activityById(id);
  if (activity === undefined) throw new Error(`There is no ${id}.`);
  return activity;
};
/** What is planned for a row, as for a class sheet. */
function planned(step: Step, { activity, givens, settings = [] }: Omit<TeamAtTable, 'right'>) {
  const { decimalMark, studentsDilute } = readLessonSettings(settings);
  return saidInRow(step, { activity, givens, decimalMark, studentsDilute });
}
const listed = (step: Step, team: Omit<TeamAtTable, 'right'>) => planned(step, team).lookAt;
const rowOf = ({ activity }: TeamAtTable, id: string): Step => {
  const step = activity.steps.find((one) => one.id === id);
  if (step === undefined) throw new Error(`${activity.id} has no row “${id}”.`);
  return step;
};

/** Titles of other rows, letters and words for figures stand for each other: of them the list has the longest. */
const shape = (text: string): string =>
  [...figureWords, ...decimalWords, remarks.figuresAsked]
    .reduce((plain, words) => plain.replace(`to ${words}.`, 'to so many.'), text)
    .replace(/ (?:Not in the list|Still missing|More than once): [^.]*\./g, '')
    .replace(/“[^”]*”/g, '“row”')
    .replace(/\b[a-z]\b/g, 'x');
const several = remarks.severalFit.split('{')[0] ?? '';
/** A text is held by one that is as long, and says the same or more. Of several slips each question is in the list. */
const holds = (list: readonly string[], said: string): boolean =>
  said.startsWith(several)
    ? list.some((one) => one.length >= said.length) &&
      (said.slice(several.length).match(/[^?]+\?/g) ?? ['?']).every((ask) => list.some((one) => one.includes(ask)))
    : list.some((one) => one.length >= said.length && shape(one).includes(shape(said)));

const teams: readonly (readonly [string, () => TeamAtTable])[] = [
  ...allActivities().map((activity) => [activity.id, () => teamOf(activity)] as const),
  [
    'a dilution from the stock really made',
    () => {
      const base = activityById('stock and dilution', { fromRealStock: true }) ?? known('stock and dilution');
      const settings = [
        ['work the dilution from', 'real stock'],
        ['judge figures', 'yes'],
      ] as const;
      return { ...teamOf(base, { formula: 'KAl(SO4)2·12H2O', ion: 'Al3+', purity: '96.0' }), settings };
    },
  ],
];
/** Substances that say other things beside the rows about them: they heat water, burn, are poisonous, or nobody knows them. */
const substances = (
  [
    ['stock and dilution', { formula: 'NaOH', 'stock molarity': '5.00', 'target molarity': '0.500', ion: 'Na+' }],
    ['stock and dilution', { formula: 'XyZ' }],
    ['dilution', { formula: 'H2SO4', 'stock molarity': '6.00', 'target molarity': '0.500' }],
    ['serial dilution', { formula: ' H2SO4 ', 'stock molarity': '6.00' }],
    ['serial dilution', { formula: '' }],
    ['concentrated reagent', { formula: 'H2SO4', 'mass percent': '96.0', density: '1.84' }],
    ['concentrated reagent', { formula: 'NH3', 'mass percent': '28.0', density: '0.898' }],
    ['weighed residue', { formula: 'KSCN' }],
  ] as const
).flatMap(([id, own]) =>
  (id === 'concentrated reagent' ? (['staff', 'students'] as const) : (['staff'] as const)).map((pour) => {
    const activity = withEvidenceSteps(withSafetySteps(known(id)));
    const givens: TeamAtTable['givens'] = { ...firstTeamGivens(activity), key: 'c1-t2', ...own };
    const settings = [['concentrated reagents', pour]] as const;
    return [id, own.formula, pour, { activity, givens, right: {}, settings }] as const;
  }),
);
/** Rows about the substance; without the numbers of a lesson the others say that these are missing. */
const rowsAbout = ({ activity, givens }: TeamAtTable): readonly Step[] =>
  activity.steps
    .filter(({ kind }) =>
      (readFormula(givens.formula).ok ? ['ticked', 'safety', 'chosen', 'ordered'] : ['ticked', 'safety']).includes(
        kind,
      ),
    )
    .map((step) => ({ ...step, bench: false }));

const said = new Map<string, ReadonlySet<string>>();
/** What a row says whatever is typed, worked out once. */
function saidTo(name: string, step: Step, team: TeamAtTable): ReadonlySet<string> {
  const place = `${name} ${step.id}`;
  const texts = said.get(place) ?? saidWhateverIsTyped(step, team);
  said.set(place, texts);
  return texts;
}
const notHeld = (texts: Iterable<string>, list: readonly string[]): readonly string[] =>
  [...texts].filter((text) => !holds(list, text));
const wait = remarks.waitForRow.split('{')[0] ?? '';

describe('what a row may say, by which its height is planned', () => {
  it.each(teams)('holds what every row says in %s, whatever a team types', (name, made) => {
    const team = made();
    for (const step of team.activity.steps) {
      const texts = saidTo(name, step, team);
      expect([step.id, notHeld(texts, listed(step, team))]).toEqual([step.id, []]);
      if (step.kind !== 'told') expect([step.id, texts.size > 1]).toEqual([step.id, true]);
    }
  });
  it.each(substances)(
    'holds what rows about the substance say in %s of “%s”, poured by %s',
    (id, formula, pour, team) => {
      const rows = rowsAbout(team);
      expect(rows.length).toBeGreaterThan(2);
      for (const step of rows)
        expect([step.id, notHeld(saidTo([id, formula, pour].join(), step, team), listed(step, team))]).toEqual([
          step.id,
          [],
        ]);
    },
  );
  it('holds the cautions with the numbers of a class that writes a comma', () => {
    const base = known('concentrated reagent');
    const activity = withEvidenceSteps(withSafetySteps(base));
    const comma = { 'mass percent': '37,2', density: '1,18', 'target molarity': '0,500' };
    const settings = [['decimal mark', 'comma']] as const;
    const team = { activity, givens: { ...firstTeamGivens(base), ...comma }, right: {}, settings };
    const step = rowOf(team, 'cautions read');
    expect(notHeld(saidWhateverIsTyped(step, team), listed(step, team))).toEqual([]);
  });

  /** What one of our teams might read, but none of those at this table. */
  const unread: readonly string[] = [
    // No lesson leaves open which mark is for the decimals.
    unreadableTexts['two ways'],
    ...safetyQuestion({ topic: 'splash' }).options.flatMap(({ right = '' }) => right),
    // The tips of these two procedures that come with no reminder: the order that they are about is wrong there.
    ...[solidToFlask(), pipetteToFlask()].flatMap(({ rules, reminders = {} }) =>
      rules
        .filter(({ weight }) => weight === 'advised')
        .flatMap(({ ask }) => Object.values(reminders).map((one) => `${orderTexts.works} ${one} ${ask}`)),
    ),
  ];
  it.each([' KBr ', '', undefined])('holds the very answer that is offered for the substance “%s”', (formula) => {
    const { activity, right, ...team } = teamOf(known('serial dilution'));
    const { formula: _, ...others } = team.givens;
    const own = { activity, right, givens: formula === undefined ? others : { ...others, formula } };
    const step = rowOf(own, 'cautions read');
    const [first] = saidWhateverIsTyped(step, own);
    expect(first).toContain(formula?.trim() ? '“yes, KBr”' : '“yes”');
    expect(listed(step, own)).toContain(first);
  });

  it('holds nothing that no team ever reads', () => {
    const plain = (text: string) => shape(text).replace(/asks for [^.]*\./, 'asks for a unit.');
    const rows = [
      ...teams.flatMap(([name, made]) => {
        const team = made();
        return team.activity.steps.map((step) => [name, step, team] as const);
      }),
      ...substances
        .filter(([, formula]) => readFormula(formula).ok)
        .flatMap(([id, formula, pour, team]) =>
          rowsAbout(team).map((step) => [[id, formula, pour].join(), step, team] as const),
        ),
    ];
    const read = [...new Set(rows.flatMap(([name, step, team]) => [...saidTo(name, step, team)].map(plain)))];
    const never = rows.flatMap(([, step, team]) =>
      listed(step, team).filter(
        (text) => text === '' || (!unread.includes(text) && !read.some((one) => one.includes(plain(text)))),
      ),
    );
    expect([...new Set(never)]).toEqual([]);
  });

  it.each(allActivities().map((activity) => [activity.id, activity] as const))(
    'holds for an exit question of %s one question or remark at a time, kept or shown',
    (id, activity) => {
      const numbers = numbersForTeams({ ...startOf(id), ownNumbers: false });
      if (!numbers.ok) throw new Error(`${id} has no numbers.`);
      const settings = { ...startOf(id).settings, 'exit questions': '1' };
      const [plan] = withExitNumbers(numbers.value.teams, { activity, settings, seats: 1 });
      const [step] = exitSteps(activity, 1);
      if (plan === undefined || step === undefined) throw new Error(`${id} has no exit question.`);
      for (const shown of ['yes', 'no']) {
        const team = { activity, givens: plan.givens, right: {}, settings: [['show exit checks', shown]] } as const;
        expect([shown, notHeld(saidWhateverIsTyped(step, team), listed(step, team))]).toEqual([shown, []]);
      }
      const list = listed(step, { activity, givens: plan.givens });
      expect(list).toContain(exitTexts.kept);
      const matching = remarks.oneFits.split('{')[0] ?? '';
      const { 'not a number': number, ...longer } = unreadableTexts;
      expect(list).toContain(number);
      for (const text of [remarks.notYet, ...Object.values(longer)]) expect(list).not.toContain(text);
      expect(list.filter((text) => text.startsWith(matching) || text.startsWith(wait))).toEqual([]);
    },
  );

  it('holds at each level the hint that the sheet gives before anything is typed', () => {
    for (const [mark, own] of [
      ['point', {}],
      ['comma', { 'stock molarity': '0,300', 'target molarity': '0,0450' }],
    ] as const) {
      const team = teamOf(known('stock and dilution'), own);
      const settings = [['decimal mark', mark]] as const;
      const { steps } = team.activity;
      const atLevel = (level: number) =>
        teamChecks({
          givenNames: Object.keys(team.givens),
          givenValues: Object.values(team.givens),
          settings: [['activity', team.activity.id], ...settings],
          steps: steps.map(({ id }) => id),
          entries: steps.map(() => ''),
          helpWanted: steps.map(() => level),
        }).map(({ hint }) => hint);
      const levels = [1, 2, 3].map(atLevel);
      for (const [place, step] of steps.entries()) {
        const { hint } = planned(step, { ...team, settings });
        expect([step.id, hint]).toEqual([step.id, levels.map((hints) => hints[place])]);
        expect([step.id, hint.filter((text) => text === '')]).toEqual([step.id, []]);
      }
    }
  });

  it('names rows above alone where a balance is read, and none where nobody waits', () => {
    const team = teamOf(known('stock and dilution'));
    const { steps } = team.activity;
    for (const [place, step] of steps.entries()) {
      const waits = listed(step, team).filter((text) => text.startsWith(wait));
      const above = steps.slice(0, place).map(({ title }) => filled(remarks.waitForRow, { row: title }));
      if (step.kind === 'weighing') expect([step.id, waits]).toEqual([step.id, above]);
      else expect([step.id, waits.length]).toEqual([step.id, step.bench ? 2 : 0]);
    }
  });
  it('asks nobody to read cautions in a lesson that has no row for them', () => {
    const { activity, ...team } = teamOf(known('stock and dilution'));
    const bare = { ...activity, steps: activity.steps.filter(({ kind }) => kind !== 'ticked' && kind !== 'safety') };
    const waits = listed(rowOf({ activity, ...team }, 'mass weighed'), { ...team, activity: bare }).filter((text) =>
      text.startsWith(wait),
    );
    expect(waits).toEqual([filled(remarks.waitForRow, { row: 'Molarity after dilution' })]);
  });
  it('names the row with the cautions or the questions about them, whichever has the longer title', () => {
    const { activity, ...team } = teamOf(known('stock and dilution'));
    const withTitles = (titles: Readonly<Record<string, string>>) => ({
      ...activity,
      steps: activity.steps.map((step) => ({ ...step, title: titles[step.kind] ?? step.title })),
    });
    for (const [titles, longest] of [
      [{ ticked: 'Cautions', safety: 'What a splash can do' }, 'What a splash can do'],
      [{ ticked: 'Cautions to be read by all', safety: 'Splash' }, 'Cautions to be read by all'],
    ] as const) {
      const own = withTitles(titles);
      const list = listed(rowOf({ activity: own, ...team }, 'mass weighed'), { ...team, activity: own });
      expect(list).toContain(filled(remarks.waitForTick, { row: longest }));
    }
  });

  const asked = (slip: SlipId) => expect.stringContaining(slipTexts[slip].ask);
  it('holds what is asked about a solid that is not pure for those alone who have one', () => {
    const team = teamOf(known('solution from an impure solid'), { purity: '94.5' });
    for (const id of ['mass of solute', 'stock made'])
      for (const slip of ['purity-ignored', 'purity-inverted'] as const) {
        const question = slip === 'purity-ignored' ? slipTexts[slip].ask : 'If only part of the solid is the salt';
        const of = (purity: string) => listed(rowOf(team, id), { ...team, givens: { ...team.givens, purity } });
        expect(of('94.5')).toContainEqual(expect.stringContaining(question));
        for (const pure of ['', '  ']) expect(of(pure)).not.toContainEqual(expect.stringContaining(question));
      }
    const residue = teamOf(known('weighed residue'), { purity: '94.5' });
    expect(listed(rowOf(residue, 'molarity found'), residue)).not.toContainEqual(asked('purity-ignored'));
  });
  it.each([
    ['KBr', []],
    ['CaCl2', ['one-subscript-missed']],
    ['Ca(OH)2', ['group-subscript-ignored', 'bracket-number-on-one-atom']],
    ['CuSO4·5H2O', ['water-of-hydration-left-out', 'one-water-only', 'water-number-on-one-atom', 'dot-as-times']],
    ['Na2CO3·H2O', ['water-of-hydration-left-out']],
    ['the blue one', []],
  ] as const)('holds questions about %s that its formula can raise', (formula, raised) => {
    const team = teamOf(known('stock and dilution'));
    const list = listed(rowOf(team, 'molar mass'), { ...team, givens: { ...team.givens, formula } });
    const inFormula = [
      'water-of-hydration-left-out',
      'one-water-only',
      'water-number-on-one-atom',
      'dot-as-times',
      'group-subscript-ignored',
      'bracket-number-on-one-atom',
    ] as const;
    for (const slip of raised) expect(list).toContainEqual(asked(slip));
    for (const slip of inFormula)
      if (!formula.includes('H2O') && !raised.some((one) => one === slip)) expect(list).not.toContainEqual(asked(slip));
  });

  it('holds what a procedure asks of hot or strong substances only where its row says what is handled', () => {
    const team = teamOf(known('stock and dilution'));
    const ordered = team.activity.steps.filter((step): step is OrderedStep => step.kind === 'ordered');
    expect(ordered.length).toBe(2);
    for (const step of ordered) {
      const { handles, ...untold } = step;
      const { rules, reminders = {} } = procedureByName(step.procedure);
      const texts = [
        ...rules.filter(({ when }) => when !== undefined).map(({ ask }) => ask),
        ...Object.values(reminders),
      ];
      const has = (one: OrderedStep) => texts.map((text) => listed(one, team).some((said) => said.includes(text)));
      expect([handles !== undefined, has(step)]).toEqual([true, texts.map(() => true)]);
      expect(has(untold)).toEqual(texts.map(() => false));
    }
  });
  it('holds a remark beside a link that is none, and nothing beside words', () => {
    const team = teamOf(known('stock and dilution'));
    expect(listed(rowOf(team, 'picture'), team)).toEqual([notALink]);
    for (const id of ['seen', 'in your words']) expect(listed(rowOf(team, id), team)).toEqual([]);
  });
});
