import { describe, expect, it } from 'vitest';
import { teamChecks } from '../../src/lab/judging/teamChecks.ts';
import { checkFigure } from '../../src/lab/key/checkFigure.ts';
import { teamKey } from '../../src/lab/key/teamKey.ts';
import { activityById, allActivities } from '../../src/lab/lesson/activities.ts';
import { defaultSettings } from '../../src/lab/lesson/defaultSettings.ts';
import { fitted, periodPlans } from '../../src/lab/lesson/periodPlan.ts';
import { layoutVersion } from '../../src/workbook/layout.ts';
import { firstTeamGivens } from './firstTeam.ts';

const keyOf = (id: string, givens: Record<string, string> = {}, settings: Partial<typeof defaultSettings> = {}) => {
  const activity = activityById(id);
  if (!activity) throw new Error(id);
  const team = {
    key: 'c1-t1',
    className: 'Fern class',
    team: 'Otter',
    givens: { ...firstTeamGivens(activity), ...givens },
  };
  return {
    activity,
    team,
    lines: teamKey({ activity, team, settings: { ...defaultSettings, activity: id, ...settings } }),
  };
};

describe('the key', () => {
  it('works out the everyday lesson, by hand: 0.300 mol/L × 0.200 L = 0.0600 mol; × 119.00 g/mol = 7.14 g', () => {
    const { lines } = keyOf('stock and dilution', {
      formula: 'KBr',
      'stock molarity': '0.300',
      flask: '200',
      'target molarity': '0.0450',
      'target volume': '100',
      ion: 'Br-',
    });
    const answer = (step: string) => lines.find((line) => line.step === step)?.answer;
    expect(answer('molar mass')).toBe('119.00');
    expect(answer('moles of solute')).toBe('0.0600');
    expect(answer('mass of solute')).toBe('7.14');
    expect(answer('mass weighed')).toBe('about 7.14');
    expect(answer('stock volume')).toBe('15.0');
    expect(answer('water volume')).toBe('85.0');
    expect(answer('ion molarity')).toBe('0.0450');
  });

  it.each(allActivities().map(({ id }) => id))('is on target in every row of %s, checked by the check itself', (id) => {
    const { activity, team, lines } = keyOf(id);
    const names = Object.keys(team.givens);
    const checked = teamChecks({
      givenNames: names,
      givenValues: names.map((name) => team.givens[name]),
      settings: Object.entries({ ...defaultSettings, activity: id, layout: String(layoutVersion) }),
      steps: lines.map(({ step }) => step),
      entries: lines.map(({ answer }) => answer.replace('about ', '')),
    });
    const scored = activity.steps.map(({ kind }) => kind !== 'told');
    expect(lines.filter((_, index) => scored[index] && checked[index]?.check !== 'on target')).toEqual([]);
  });

  it('says why a step has no answer', () => {
    const { lines } = keyOf('stock and dilution', { flask: 'two hundred' });
    const line = lines.find(({ step }) => step === 'mass of solute');
    expect(line?.answer).toBe('');
    expect(line?.note).toMatch(/^“two hundred” can’t be used for the flask\. /);
  });

  it('has no check figure for what rests on a reading, and one or a few for every other number', () => {
    const { lines, activity } = keyOf('stock and dilution');
    for (const { step, checkFigures } of lines) {
      const { kind } = activity.steps.find(({ id }) => id === step) ?? {};
      const rests = ['stock made', 'diluted molarity'].includes(step);
      if (kind === 'calculated' && !rests) expect(checkFigures.length, step).toBeGreaterThan(0);
      else expect(checkFigures, step).toEqual([]);
      expect(checkFigures.length).toBeLessThanOrEqual(3);
    }
  });

  it('writes a decimal comma where the class does', () => {
    const comma = keyOf(
      'stock and dilution',
      { 'stock molarity': '0,300', 'target molarity': '0,0450' },
      { 'decimal mark': 'comma' },
    );
    expect(comma.lines.find(({ step }) => step === 'mass of solute')?.answer).toBe('7,14');
  });
});

describe('the check figure', () => {
  it.each([
    // Hundredths: 2 + 5 + 4 = 11, and 2 for the size: 13
    ['0.0254', 3],
    // Hundreds: 1 + 1 + 9 = 11, and 8 for the size: 19; zeros at the end change nothing
    ['119.00', 9],
    ['119', 9],
    // Ones: 7 + 1 + 4 = 12, and nothing for the size
    ['7.14', 2],
    ['7,14', 2],
    // Tenths: 3 + 1, and 1 for the size; tens: 1 + 5, and 9
    ['0.310', 5],
    ['15.0', 5],
    ['0', 0],
  ])('of %s is %d', (typed, figure) => {
    expect(checkFigure(typed)).toBe(figure);
  });

  it('changes with every single wrong digit and with a moved point', () => {
    for (const right of ['7.14', '0.0254', '119.00', '15.0', '0.120']) {
      for (let place = 0; place < right.length; place += 1) {
        if (right[place] === '.' || /^0?\.?0*$/.test(right.slice(0, place + 1))) continue;
        for (const digit of '123456789') {
          if (digit === right[place]) continue;
          const wrong = `${right.slice(0, place)}${digit}${right.slice(place + 1)}`;
          expect(checkFigure(wrong), wrong).not.toBe(checkFigure(right));
        }
      }
    }
    for (const [right, moved] of [
      ['7.14', '7140'],
      ['7.14', '0.00714'],
      ['15.0', '1.50'],
    ] as const) {
      expect(checkFigure(moved), moved).not.toBe(checkFigure(right));
    }
  });
});

describe('the period in minutes', () => {
  const everyday = activityById('stock and dilution');
  if (!everyday) throw new Error('Expected the everyday activity.');

  it('has every step in one period or in its own', () => {
    const one = periodPlans(everyday, 1);
    const two = periodPlans(everyday, 2);
    expect(one).toHaveLength(1);
    expect(two.map(({ period }) => period)).toEqual([1, 2]);
    expect(one[0]?.lines).toHaveLength(everyday.steps.length + 3);
    expect(two.reduce((sum, { lines }) => sum + lines.length - 2, 0)).toBe(everyday.steps.length + 1);
  });

  it.each([10, 40, 45, 50, 90, 100])(
    'fits a total of %d minutes exactly, in whole minutes, at least one each',
    (minutes) => {
      for (const plan of periodPlans(everyday, 2)) {
        const fit = fitted(plan, minutes);
        expect(fit.lines.reduce((sum, line) => sum + line.minutes, 0)).toBe(Math.max(minutes, plan.lines.length));
        expect(fit.lines.every((line) => Number.isInteger(line.minutes) && line.minutes >= 1)).toBe(true);
      }
    },
  );
});
