import { cautions } from '../../chemistry/cautions.ts';
import type { Formula } from '../../chemistry/formula.ts';
import { success } from '../../errors/result.ts';
import type { Percent } from '../../measurement/quantity.ts';
import type { EntryHelp, Filled, FunctionEntry } from '../entry.ts';
import { oneTable } from '../oneTable.ts';

export const cautionsEntry = {
  name: 'CAUTIONS',
  arguments: [
    { name: 'formula', kind: 'formula', unit: '', about: 'formula of the substance as it stands in the bottle' },
    {
      name: 'mass_percent',
      kind: 'percent',
      unit: '%',
      about: 'grams of the substance in 100 g of a solution in water; undiluted if left out',
      optional: true,
    },
  ],
  columns: ['signal word', 'what it can do', 'what to do about it'],
  call: oneTable,
  compute(formula: Formula, massPercent: Percent | undefined) {
    const found = cautions(formula, massPercent);
    if (!found.ok) return found;
    const { signalWord, statements } = found.value;
    return success<Filled[][]>(
      statements.map(({ text, advice }, line) => [line === 0 ? signalWord : '', text, advice]),
    );
  },
} as const satisfies FunctionEntry;

export const cautionsHelp = {
  group: 'Checking',
  summary: 'What a substance or a solution of it can do, and what to do about it.',
  returns: 'a table with a heading row; its last line defers to the safety data sheet and local rules',
  source:
    'CLP Annex VI and Annex I as consolidated 2026-07-01 (codes and limits), supplier sheets where Annex VI has no entry',
  notes: [
    'Each line begins with its GHS code and ends with how sure it is. Rules of precedence and signal words are from memory.',
    'Substances are found by a list of spellings. One that is not listed is said to be unlisted, which never means safe.',
    'This is no safety data sheet. Read the sheet of your supplier and follow your local rules.',
  ],
  examples: [
    {
      call: ['KNO3'],
      gives: [
        ['signal word', 'what it can do', 'what to do about it'],
        [
          'Warning',
          'H272: makes a fire burn harder (one source, not harmonised)',
          'Keep away from anything that burns; never grind or heat it with other substances. Wear eye protection.',
        ],
        [
          '',
          '',
          'This is no safety data sheet. Read the one from your supplier; follow local rules and your school’s own assessment.',
        ],
      ],
    },
    {
      call: ['XeF2'],
      gives: [
        ['signal word', 'what it can do', 'what to do about it'],
        [
          '',
          'Unlisted: nothing is known here about this formula. That does not mean that it is harmless.',
          'Read the safety data sheet before anyone opens the bottle; until then treat it as harmful.',
        ],
        [
          '',
          '',
          'This is no safety data sheet. Read the one from your supplier; follow local rules and your school’s own assessment.',
        ],
      ],
    },
  ],
  refuses: [
    {
      call: ['HCl', 0.37],
      says: 'Expected one reading of mass_percent, received 0.37, which could be 0.37 % or 37 %. Type it as text with its sign, such as "98 %".',
    },
  ],
} as const satisfies EntryHelp;
