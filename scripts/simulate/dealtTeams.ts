import { allActivities } from '../../src/lab/lesson/activities.ts';
import type { Activity } from '../../src/lab/lesson/activity.ts';
import { defaultSettings, defaultShelf } from '../../src/lab/lesson/defaultSettings.ts';
import { startingGivens } from '../../src/lab/lesson/startingGivens.ts';
import { numbersForTeams } from '../../src/lab/numbers/numbersForTeams.ts';

type Givens = Readonly<Record<string, string>>;

/** Solutes to start from: plain salts, hydrates, brackets, a molecule, an impure solid; each activity takes what fits it. */
const solutes: readonly Givens[] = [
  { formula: 'KBr', ion: 'Br-', purity: '' },
  { formula: 'CuSO4·5H2O', ion: 'Cu2+', purity: '' },
  { formula: 'MgCl2·6H2O', ion: 'Cl-', purity: '' },
  { formula: '(NH4)2SO4', ion: 'NH4+', purity: '' },
  { formula: 'Ca(NO3)2', ion: 'NO3-', purity: '' },
  { formula: 'Na2CO3', ion: 'CO3^2-', purity: '95.0' },
];

/** Where an activity takes few substances, those that it does. */
const own: Readonly<Record<string, readonly Givens[]>> = {
  'solution from a hydrate': [
    { formula: 'CuSO4·5H2O', ion: 'Cu2+' },
    { formula: 'MgCl2·6H2O', ion: 'Cl-' },
    { formula: 'MgSO4·7H2O', ion: 'Mg2+' },
  ],
  'solution from an impure solid': [
    { formula: 'Na2CO3', ion: 'CO3^2-', purity: '95.0' },
    { formula: 'CaCl2·2H2O', ion: 'Cl-', purity: '88.0' },
  ],
  'concentrated reagent': [
    { formula: 'HCl', 'mass percent': '37.2', density: '1.18' },
    { formula: 'H3PO4', 'mass percent': '85.5', density: '1.71' },
    { formula: 'CH3COOH', 'mass percent': '99.7', density: '1.05' },
  ],
  'weighed residue': [{ formula: 'KBr' }, { formula: 'NaCl' }, { formula: 'K2SO4', molarity: '0.300' }],
  'measured density': [
    { formula: 'C12H22O11' },
    { formula: 'NaCl', molarity: '1.00' },
    { formula: 'CaCl2', molarity: '0.500' },
    { formula: 'C6H12O6', molarity: '0.800' },
  ],
};

export interface DealtTeam {
  readonly activity: Activity;
  readonly givens: Givens;
}

/** Teams of every activity, in turn, with the numbers that plans give them: so many of each at least. */
export function dealtTeams({ teams, seed }: { readonly teams: number; readonly seed: string }): readonly DealtTeam[] {
  return allActivities().flatMap((activity) => {
    const names = activity.givens.map(({ name }) => name);
    const starts = own[activity.id] ?? solutes;
    const dealt: DealtTeam[] = [];
    for (let plan = 0; dealt.length < teams; plan += 1) {
      const start = Object.entries(starts[plan % starts.length] ?? {}).filter(([name]) => names.includes(name));
      const numbers = numbersForTeams({
        activity: activity.id,
        givens: { ...startingGivens(activity), ...Object.fromEntries(start) },
        ownNumbers: true,
        settings: { ...defaultSettings, seed: `${seed} ${plan}` },
        shelf: defaultShelf,
        classes: [{ name: 'one', teams: Array.from({ length: 20 }, (_, team) => `Team ${team + 1}`) }],
      });
      if (!numbers.ok) throw new Error(`${activity.id}, ${numbers.error.argument}: ${numbers.error.advice}`);
      dealt.push(...numbers.value.teams.map(({ givens }) => ({ activity, givens })));
    }
    return dealt.slice(0, teams);
  });
}
