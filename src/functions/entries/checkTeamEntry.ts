import { failure, type Result, success } from '../../errors/result.ts';
import { teamChecks } from '../../lab/judging/teamChecks.ts';
import type { CellValue } from '../../measurement/cellValue.ts';
import type { EntryHelp, Filled, FunctionEntry, Grid } from '../entry.ts';
import { wholeBlock } from '../wholeBlock.ts';

export const checkTeamEntry = {
  name: 'CHECKTEAM',
  arguments: [
    { name: 'given_names', kind: 'row', about: 'names of the given numbers' },
    { name: 'given_values', kind: 'row', about: "this team's values, below or beside those names" },
    { name: 'settings', kind: 'table', about: 'settings in two columns, name and value' },
    { name: 'steps', kind: 'column', about: 'step ids, from the heading row to the closing row' },
    { name: 'entries', kind: 'column', about: "the team's entries, of the same height" },
    { name: 'help_wanted', kind: 'column', optional: true },
    { name: 'own_hints', kind: 'table', optional: true },
  ],
  columns: ['check', 'feedback', 'hint'],
  call: wholeBlock,
  compute(
    givenNames: readonly CellValue[],
    givenValues: readonly CellValue[],
    settings: Grid,
    steps: readonly CellValue[],
    entries: readonly CellValue[],
    helpWanted: readonly CellValue[] | undefined,
    ownHints: Grid | undefined,
  ): Result<Filled[][]> {
    if (givenNames.length !== givenValues.length) {
      return unequal('given_values', 'as many as the given names', [givenNames.length, givenValues.length, 'cells']);
    }
    if (steps.length !== entries.length) {
      return unequal('entries', 'as many as the steps', [steps.length, entries.length, 'rows']);
    }
    if (helpWanted !== undefined && helpWanted.length !== steps.length) {
      return unequal('help_wanted', 'as many as the steps', [steps.length, helpWanted.length, 'rows']);
    }
    if ((settings[0]?.length ?? 0) < 2) {
      return failure({
        code: 'range-shape',
        argument: 'settings',
        expected: 'two: name and value',
        received: 'one column',
        advice: 'Select the names together with the values beside them.',
      });
    }
    const rows = teamChecks({ givenNames, givenValues, settings, steps, entries, helpWanted, ownHints });
    return success(rows.map(({ check, lookAt, hint }) => [check, lookAt, hint]));
  },
} as const satisfies FunctionEntry;

export const checkTeamHelp = {
  group: 'Checking',
  summary: "Checks a team's whole block of entries, and gives the hints it asks for.",
  about: {
    help_wanted: 'help wanted in each row, 0 to 3, of the same height',
    own_hints: "the teacher's own hints and links, as the Help sheet has them",
  },
  returns: 'three columns of text as high as the steps: check, feedback, hint',
  source: 'definition of amount concentration, IUPAC Gold Book; honest rounding of atomic weights and results',
  notes: [
    'A step id is the id of a step in the activity named in the settings, or the name of a quantity as in CHECKSTEP, which takes the givens it names.',
    'The first row gives the headings where its step id is blank; any other row without a step id stays blank, so rows can be inserted and deleted.',
    'Settings read: activity, figures, atomic-weight decimals, chlorine on the table (35.45 or 35.5), decimal mark (point or comma), judge figures, highest help level, closed at the bell, and what measured answers depend on. Other names are ignored.',
    'Where the setting closed at the bell names the given key, keys parted by semicolons, rows that are not on target say next time and ask nothing.',
    'Where the setting layout says that a sheet is older than the letters of today, its orders of letters are not judged and the row says to build again; settings without that line are taken as of today. A given named key letters actions and options for its block alone.',
    'Numbers that a team rounded and carried forward are on target. An entry that follows correctly from one that is not right says follows and names that row.',
  ],
  examples: [
    {
      call: [
        [['formula', 'molarity', 'volume']],
        [['KBr', '0.300', '200']],
        [
          ['figures', '3'],
          ['decimal mark', 'point'],
        ],
        [[''], ['molar mass'], ['mass of solute'], ['']],
        [['entry'], ['119.00'], [''], ['']],
      ],
      gives: [
        ['Check', 'Feedback', 'Hint'],
        ['on target', 'Yes, this fits your numbers.', ''],
        ['blank', '', ''],
        ['', '', ''],
      ],
    },
  ],
  refuses: [],
} as const satisfies EntryHelp;

const unequal = (argument: string, expected: string, [wanted, found, what]: readonly [number, number, string]) =>
  failure({
    code: 'range-shape',
    argument,
    expected: `${expected}, ${wanted}`,
    received: `${found} ${found === 1 ? what.replace(/s$/, '') : what}`,
    advice: 'Select the same rows or columns of the block for both.',
  });
