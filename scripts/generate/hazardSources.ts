// Where the hazards of each listed substance come from, how to handle it and where it goes, for the teacher.
import { type HazardTables, tableSubstances } from './cautionList.ts';

/** Who read the act and when is of no use to a teacher; what was read is. */
const ofTheReading: readonly (readonly [RegExp, string])[] = [
  [/, read (?:by the project|again here)/g, ''],
  [/\(read again here in two transcriptions\)/g, '(two transcriptions)'],
  [/read by the project; /g, ''],
  [/ \((?:as in the first table|read by the project)\)/g, ''],
  [/; the project has H272 only: /g, '; '],
  [/; project: open compilation/g, ''],
];

const whole = (text: string | undefined): string =>
  ofTheReading
    .reduce((words, [found, put]) => words.replace(found, put), text ?? '')
    .replace(/[|`\\]/g, ' ')
    .trim();

/** Text of `src/chemistry/hazardSources.generated.ts`. */
export function hazardSourcesSource(paths: HazardTables): string {
  return [
    '// Generated from tests/published/substances.csv by `npm run build`; edit that file instead.',
    '',
    '/** Name | source | where it goes, with who says so | handling, for staff. */',
    'export const hazardSources = `',
    ...tableSubstances(paths).map(({ name, bottle }) =>
      [name, whole(bottle.source), whole(bottle.drain), whole(bottle.handling)].join('|'),
    ),
    '`;',
    '',
  ].join('\n');
}
