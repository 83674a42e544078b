import { describe, expect, it } from 'vitest';
import { withExitNumbers } from '../../src/lab/exit/exitNumbers.ts';
import { exitOutcomes } from '../../src/lab/exit/exitOutcomes.ts';
import { exitGivens, exitStep, exitStepId, mostSeats } from '../../src/lab/exit/exitStep.ts';
import { exitSteps } from '../../src/lab/exit/exitSteps.ts';
import { seatsOf } from '../../src/lab/exit/seatsOf.ts';
import { withExitSteps } from '../../src/lab/exit/withExitSteps.ts';
import { saidInRow } from '../../src/lab/judging/saidInRow.ts';
import { teamChecks } from '../../src/lab/judging/teamChecks.ts';
import { teamKey } from '../../src/lab/key/teamKey.ts';
import { allActivities } from '../../src/lab/lesson/activities.ts';
import type { Activity } from '../../src/lab/lesson/activity.ts';
import { defaultSettings, defaultShelf } from '../../src/lab/lesson/defaultSettings.ts';
import type { Settings, TeamPlan } from '../../src/lab/lesson/setup.ts';
import { shownWords } from '../../src/lab/lesson/shownWords.ts';
import { startingGivens } from '../../src/lab/lesson/startingGivens.ts';
import { numbersForTeams } from '../../src/lab/numbers/numbersForTeams.ts';
import { exitTexts } from '../../src/lab/texts/exit.ts';
import { badBriefly } from '../../src/lab/texts/feedback.ts';
import { classWidths } from '../../src/workbook/classWidths.ts';
import { classColumns as at, mostRowHeight } from '../../src/workbook/layout.ts';
import { looks } from '../../src/workbook/looks.ts';
import { heightOf } from '../../src/workbook/textHeight.ts';
import { cases, seed } from '../depth.ts';

const seats = mostSeats;
const settingsOf = ({ id }: Activity, more: Partial<Settings> = {}): Settings => ({
  ...defaultSettings,
  activity: id,
  'exit questions': String(seats),
  seed: String(seed),
  ...more,
});

/** Teams of an activity with numbers of their own, and numbers for every seat. */
function teamsOf(activity: Activity, count: number, more: Partial<Settings> = {}): readonly TeamPlan[] {
  const settings = settingsOf(activity, more);
  const numbers = numbersForTeams({
    activity: activity.id,
    givens: startingGivens(activity) as Record<string, string>,
    ownNumbers: true,
    settings,
    shelf: defaultShelf,
    classes: [{ name: 'Fern', teams: Array.from({ length: count }, (_, place) => `Team ${place + 1}`) }],
  });
  if (!numbers.ok) throw new Error(`Expected numbers for ${activity.id}.`);
  return withExitNumbers(numbers.value.teams, { activity, settings, seats });
}
const checked = (team: TeamPlan, settings: Settings, answers: Readonly<Record<string, string>>, shown: boolean) => {
  const names = Object.keys(team.givens);
  return teamChecks({
    givenNames: names,
    givenValues: names.map((name) => team.givens[name]),
    settings: Object.entries({ ...settings, 'show exit checks': shown ? 'yes' : 'no' }),
    steps: Object.keys(answers),
    entries: Object.values(answers),
    helpWanted: Object.keys(answers).map(() => '3'),
  });
};
const activities = allActivities().map((activity) => [activity.id, activity] as const);
const keyOf = (activity: Activity, team: TeamPlan, settings: Settings) =>
  Object.fromEntries(
    teamKey({ activity: withExitSteps(activity, settings), team, settings })
      .filter(({ step }) => exitStep(activity, step) !== undefined)
      .map(({ step, answer }) => [step, answer]),
  );

describe.each(activities)('exit questions of %s', (_, activity) => {
  const count = cases({ short: 10, deep: 200 });
  const teams = teamsOf(activity, count);
  const settings = settingsOf(activity);

  it('are on target for every key and seat with the key’s own answers, in point and comma', () => {
    let judged = 0;
    for (const mark of ['point', 'comma'] as const) {
      const inMark = { 'decimal mark': mark };
      for (const team of mark === 'point' ? teams : teamsOf(activity, 2, inMark)) {
        const answers = keyOf(activity, team, { ...settings, ...inMark });
        expect(Object.keys(answers)).toHaveLength(seats);
        const rows = checked(team, { ...settings, ...inMark }, answers, true);
        expect([team.key, mark, answers, rows.map(({ check }) => check)]).toEqual([
          team.key,
          mark,
          answers,
          Object.keys(answers).map(() => 'on target'),
        ]);
        judged += rows.length;
      }
    }
    expect(judged).toBe((count + 2) * seats);
  });
  it('have numbers that no other seat of the team and no row of it has, the same for the same seed', () => {
    for (const team of teams) {
      const sets = Array.from({ length: seats }, (_seat, place) =>
        exitGivens(exitStepId(place + 1)).map(({ name }) => team.givens[name]),
      );
      expect(sets.flat().every((value) => (value ?? '') !== '')).toBe(true);
      expect(new Set(sets.map((set) => set.join())).size).toBe(seats);
      const own = activity.givens
        .filter(({ unit }) => unit === 'mL' || unit === 'mol/L')
        .map(({ name }) => Number(team.givens[name]));
      expect(sets.flat().filter((value) => own.includes(Number(value)))).toEqual([]);
    }
    const few = teamsOf(activity, 2);
    expect(teamsOf(activity, 2)).toEqual(few);
    expect(teamsOf(activity, 2, { seed: String(seed + 1) })).not.toEqual(few);
  });
  it('say in their row the numbers that the check goes by', () => {
    for (const team of teams) {
      for (const step of exitSteps(activity, seats)) {
        const givens = [...activity.givens, ...exitGivens(step.id)];
        const line = shownWords(step, { values: team.givens, givens });
        for (const source of Object.values(step.takes)) {
          const value = 'given' in source ? (team.givens[source.given] ?? '') : '';
          expect([line, line.includes(value)]).toEqual([line, true]);
        }
      }
    }
  });
  it('fit a row of the height that a teacher may add, whatever is said in it', () => {
    const tall = teams.slice(0, 3).flatMap((team) =>
      exitSteps(activity, 1).flatMap((step) => {
        const around = { activity, givens: team.givens, decimalMark: 'point', studentsDilute: false } as const;
        const { lookAt, hint } = saidInRow(step, around);
        const givens = [...activity.givens, ...exitGivens(step.id)];
        const task = `${shownWords(step, { values: team.givens, givens })} 10 figures.`;
        const high = (text: string, column: number, size: number) =>
          heightOf(text, { width: classWidths[column - 1] ?? 0, size }) > mostRowHeight.added;
        return [
          ...lookAt.filter((text) => high(text, at.lookAt, looks.spilled.size)),
          ...hint.filter((text) => text !== ''),
          ...(high(task, at.task, looks.task.size) ? [task] : []),
        ];
      }),
    );
    expect(tall).toEqual([]);
  });
});

describe('an exit question', () => {
  const [, activity] = activities.find(([id]) => id === 'dilution') ?? [];
  if (activity === undefined) throw new Error('Expected a dilution.');
  const [team] = teamsOf(activity, 1);
  if (team === undefined) throw new Error('Expected a team.');
  const settings = settingsOf(activity);
  const right = keyOf(activity, team, settings)['exit 1'] ?? '';
  const one = (typed: string, shown: boolean, of = team) => checked(of, settings, { 'exit 1': typed }, shown)[0];

  it('is kept, whatever is typed, until its checks are shown, and gives no hint', () => {
    for (const typed of [right, '1', 'no idea', '=1+1'])
      expect(one(typed, false)).toEqual({ check: 'kept', lookAt: exitTexts.kept, hint: '' });
    expect(one('', false)).toEqual({ check: 'blank', lookAt: '', hint: '' });
    expect(one(right, true)).toMatchObject({ check: 'on target', hint: '' });
  });
  it('is shown to a class by its own lines of the Plan, and by nothing that is not a yes', () => {
    const withLine = (said: string) => ({ ...team, givens: { ...team.givens, 'show exit checks': said } });
    expect(one(right, false, withLine('yes'))?.check).toBe('on target');
    for (const said of ['', 'no', 'maybe', '0']) expect(one(right, false, withLine(said))?.check).toBe('kept');
  });
  it('names the slip of a wrong answer by one question, and the team’s own number where that was taken', () => {
    const litres = one(String(Number(right) / 1000), true);
    expect(litres?.check).toBe('not yet');
    expect(litres?.lookAt.split('?')).toHaveLength(2);
    const { givens } = team;
    const [stock, molarity] = [Number(givens['stock molarity']), Number(givens['exit 1 molarity'])];
    const withOwnFlask = ((molarity / stock) * Number(givens['target volume'])).toPrecision(3);
    const answers = { 'exit 1': withOwnFlask };
    expect(exitOutcomes(team, { settings, answers })[0]?.slips).toContain('other-given-used');
    expect(one(withOwnFlask, true)?.check).toBe('not yet');
  });
  it('cannot be read where its number is gone from the Plan, and the rows of the team are judged as ever', () => {
    const gone = { ...team, givens: { ...team.givens, 'exit 1 volume': '' } };
    const factor = keyFactor(gone);
    const rows = checked(gone, settings, { 'dilution factor': factor, 'exit 1': '5', 'exit 2': '' }, true);
    expect(rows.map(({ check }) => check)).toEqual(['on target', 'unreadable', 'blank']);
    expect(rows[1]?.lookAt).toBe(badBriefly('exit 1 volume'));
    const [step] = exitSteps(activity, 1);
    if (step === undefined) throw new Error('Expected an exit question.');
    const around = { activity, givens: gone.givens, decimalMark: 'point', studentsDilute: false } as const;
    // The row is planned for the longest name that it may miss.
    expect(saidInRow(step, around).lookAt).toContain(badBriefly('exit 1 molarity'));
    const strange = checked(team, { ...settings, figures: 'few' }, { 'exit 1': '5' }, true);
    expect(strange[0]?.lookAt).toBe(badBriefly('figures'));
  });
  const keyFactor = (of: TeamPlan): string =>
    teamKey({ activity, team: of, settings }).find(({ step }) => step === 'dilution factor')?.answer ?? '';

  it('is for one to four seats, and for none where the Plan says anything else', () => {
    const asked = ['0', '1', '4', '9', '-1', '1.5', 'two', ''].map((typed) => seatsOf({ 'exit questions': typed }));
    expect(asked).toEqual([0, 1, 4, 0, 0, 0, 0, 0]);
    expect(exitStep(activity, 'exit 5')).toBeUndefined();
    expect(checked(team, settings, { 'exit 9': '1' }, true)[0]?.check).toBe('unreadable');
  });
  it('keeps numbers that were edited by hand, and draws anew where they can no longer be worked', () => {
    const again = (own: Record<string, string>) =>
      withExitNumbers([{ ...team, givens: { ...team.givens, ...own } }], { activity, settings, seats: 1 })[0]?.givens;
    expect(again({ 'exit 1 volume': '333' })?.['exit 1 volume']).toBe('333');
    expect(again({ 'exit 1 molarity': '9.00' })?.['exit 1 molarity']).toBe(team.givens['exit 1 molarity']);
  });
});
