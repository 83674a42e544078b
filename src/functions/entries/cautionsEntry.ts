import { cautionRows, cautionsNamed } from '../../chemistry/cautions.ts';
import { success } from '../../errors/result.ts';
import type { CellValue } from '../../measurement/cellValue.ts';
import type { Percent } from '../../measurement/quantity.ts';
import type { EntryHelp, Filled, FunctionEntry } from '../entry.ts';
import { oneTable } from '../oneTable.ts';

export const cautionsEntry = {
  name: 'CAUTIONS',
  arguments: [
    {
      name: 'formula',
      kind: 'substance',
      about: 'formula of the substance as it stands in the bottle, or its name, such as glucose',
    },
    { name: 'mass_percent', kind: 'percent', optional: true },
  ],
  columns: ['signal word', 'what it can do', 'what to do about it'],
  call: oneTable,
  compute(substance: CellValue, massPercent: Percent | undefined) {
    const found = cautionsNamed(substance, massPercent);
    return found.ok ? success<Filled[][]>(cautionRows(found.value).map((row) => [...row])) : found;
  },
} as const satisfies FunctionEntry;

export const cautionsHelp = {
  group: 'Checking',
  summary: 'Hazards of a substance or its solution, and what to do about them.',
  about: { mass_percent: 'grams of the substance in 100 g of a solution in water; as it is sold if left out' },
  returns: 'a table with a heading row; its last line defers to the safety data sheet and local rules',
  source:
    'CLP Annex VI and Annex I as consolidated 2026-07-01 (codes and limits), supplier sheets where Annex VI has no entry',
  notes: [
    'Each line begins with its GHS code and ends with how sure it is. Rules of precedence and signal words are from memory.',
    'Substances are found by a list of spellings and names. One that is not listed is said to be unlisted, which never means safe. A formula that several substances share shows each by its name.',
    'Without a mass percent, what is sold in several strengths, such as hydrogen peroxide, shows the strictest.',
    'The last line but one says where leftovers go. It goes by the metal and the hazard at every strength.',
    'This is not a safety data sheet. Read your supplier’s and follow your local rules.',
  ],
  examples: [
    {
      call: ['KNO3'],
      gives: [
        ['signal word', 'what it can do', 'what to do about it'],
        [
          'Warning',
          'H272: makes a fire burn more fiercely (two sources agree)',
          'Keep away from anything that burns; never grind or heat it with other substances. Wear eye protection.',
        ],
        ['', '', 'Leftovers may go down the drain with plenty of water, where your local rules allow it.'],
        [
          '',
          '',
          'This is no safety data sheet. Read the one from your supplier; follow local rules and your school’s own assessment.',
        ],
      ],
    },
    {
      call: ['lime water', '0.16 %'],
      gives: [
        ['signal word', 'what it can do', 'what to do about it'],
        [
          '',
          'Not classified by the limits that are known.',
          'That is not the same as harmless: eye protection stays on.',
        ],
        [
          '',
          'At pH 11.5 or more, or 2 or less, it counts as burning skin and eyes unless tests say otherwise.',
          'Measure the pH of what you made; wear eye protection.',
        ],
        ['', '', 'Nothing down the drain: all of it, rinsings too, into the waste beaker. Staff deal with it.'],
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
        ['', '', 'Nothing down the drain: all of it, rinsings too, into the waste beaker. Staff deal with it.'],
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
      says: '0.37 for the mass percent could be 0.37 % or 37 %. Type it as text with its sign, such as "98 %".',
    },
  ],
} as const satisfies EntryHelp;
