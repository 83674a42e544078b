import { activityById } from '../../src/lab/activities.ts';
import type { QuantityName } from '../../src/lab/activity.ts';
import { checkReadyStep, readStep } from '../../src/lab/checkStep.ts';
import { defaultSettings, defaultShelf } from '../../src/lab/defaultSettings.ts';
import { numbersForTeams } from '../../src/lab/numbersForTeams.ts';
import { seededRandom } from '../../src/lab/seededRandom.ts';
import { findSlips, type SlipShare, slipLines } from './simulation.ts';

/** Starting points of the everyday activity: plain salts, hydrates, brackets, a molecule, an impure solid. */
const starts: readonly Readonly<Record<string, string>>[] = [
  { formula: 'KBr', ion: 'Br-', purity: '' },
  { formula: 'CuSO4·5H2O', ion: 'Cu2+', purity: '' },
  { formula: 'MgCl2·6H2O', ion: 'Cl-', purity: '' },
  { formula: '(NH4)2SO4', ion: 'NH4+', purity: '' },
  { formula: 'Ca(NO3)2', ion: 'NO3-', purity: '' },
  { formula: 'Na2CO3', ion: 'CO3^2-', purity: '95.0' },
];

/** Slips of the everyday rows with the numbers that a plan gives its teams. */
export function slipsOfGeneratedNumbers({ plans, seed }: { plans: number; seed: string }): {
  readonly teams: number;
  readonly slips: readonly SlipShare[];
} {
  const random = seededRandom(seed);
  const activity = activityById('stock and dilution');
  if (!activity) throw new Error('the everyday activity is not there');
  const steps = activity.steps.flatMap((step) =>
    step.kind === 'calculated' && Object.values(step.takes).every((source) => 'given' in source) ? [step] : [],
  );
  const names = steps
    .map(({ quantity }) => quantity)
    .filter((name, at, all): name is QuantityName => all.indexOf(name) === at);
  const slips = slipLines(names);
  let teams = 0;
  for (let plan = 0; teams < plans; plan += 1) {
    const numbers = numbersForTeams({
      activity: activity.id,
      givens: {
        'stock molarity': '0.300',
        flask: '200',
        'target molarity': '0.0450',
        'target volume': '100',
        ...starts[plan % starts.length],
      },
      ownNumbers: true,
      settings: { ...defaultSettings, seed: `${seed} ${plan}` },
      shelf: defaultShelf,
      classes: [{ name: 'one', teams: Array.from({ length: 40 }, (_, team) => `Team ${team + 1}`) }],
    });
    if (!numbers.ok) throw new Error(`${numbers.error.argument}: ${numbers.error.advice}`);
    for (const { givens } of numbers.value.teams) {
      teams += 1;
      for (const { quantity, takes } of steps) {
        const table = Object.entries(takes).flatMap(([name, source]): [string, string][] => {
          const value = 'given' in source ? (givens[source.given] ?? '') : '';
          return value === '' ? [] : [[name, value]];
        });
        const step = readStep(quantity, table);
        if (!step.ok) throw new Error(`${quantity}: ${step.error.argument}`);
        findSlips({ step: step.value, check: (entry) => checkReadyStep(step.value, entry), random, lines: slips });
      }
    }
  }
  return { teams, slips };
}
