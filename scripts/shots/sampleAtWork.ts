import { openStandIn, type StandIn, type StandInOptions } from '../../src/preview/standin/openStandIn.ts';
import { buildSample } from '../buildSample.ts';
import { stop } from '../prepare.mjs';

/** One team of the sample, the last, which has typed nothing. */
export const shown = { className: 'Second period', team: 'Pumice' } as const;

/** Where the Plan has a team's numbers, found as people find them: by class, team and heading. */
function numberOf(host: StandIn, heading: string): number {
  const plan = host.view('teacher').sheets.find(({ name }) => name === 'Plan');
  const text = (row: number, column: number): string => plan?.cells[`${row},${column}`]?.text ?? '';
  const rows = Array.from({ length: plan?.rows ?? 0 }, (_, index) => index + 1);
  const headings = rows.find((row) => text(row, 1) === 'key' && text(row, 2) === 'class') ?? 0;
  const line = rows.find((row) => text(row, 2) === shown.className && text(row, 3) === shown.team) ?? 0;
  const column = Array.from({ length: plan?.columns ?? 0 }, (_, index) => index + 1).find(
    (one) => text(headings, one) === heading,
  );
  return Number(text(line, column ?? 0)) || stop(`The Plan has no ${heading} for ${shown.team}.`);
}

/**
 * An entry for each answer worth showing: a molar mass that is the sum of the atomic numbers, moles that are one off in
 * the last figure, and a mass that is right for that molar mass.
 */
function shownEntries(host: StandIn) {
  const atomicNumbers = 54;
  const moles = (numberOf(host, 'stock molarity') * numberOf(host, 'flask')) / 1000;
  const lastPlace = 10 ** (Math.floor(Math.log10(moles)) - 2);
  return [
    { step: 'molar mass', text: String(atomicNumbers), check: 'not yet' },
    { step: 'moles of solute', text: (moles + lastPlace).toPrecision(3), check: 'close' },
    { step: 'mass of solute', text: (moles * atomicNumbers).toPrecision(3), check: 'follows' },
    { step: 'cautions read', text: 'yes, KBr', check: 'on target' },
  ];
}
const columns = { entry: 3, check: 5, step: 13 };

/** Types the entries as a student does, and makes sure that each gets the answer it is there for. */
function typeEntries(host: StandIn): void {
  const sheetNow = () => host.view('student').sheets.find(({ name }) => name === shown.className);
  const sheet = sheetNow();
  const textIn = (row: number, column: number, of = sheet): string => of?.cells[`${row},${column}`]?.text ?? '';
  const rows = Array.from({ length: sheet?.rows ?? 0 }, (_, index) => index + 1);
  const heading = rows.find(
    (row) =>
      textIn(row, 1) === shown.team && textIn(row, columns.step) === '' && textIn(row, columns.check) === 'Check',
  );
  if (!sheet || heading === undefined)
    throw new Error(`The sample has no rows of ${shown.team} in ${shown.className}.`);
  const placed = shownEntries(host).map((entry) => {
    const row = rows.find((one) => one > heading && textIn(one, columns.step) === entry.step);
    return row === undefined ? stop(`${shown.team} has no row for ${entry.step}.`) : { ...entry, row };
  });
  const edits = placed.map(({ row, text }) => ({ sheet: sheet.id, row, column: columns.entry, text }));
  const [refused] = host.type('student', edits).refused;
  if (refused) stop(`“${refused.edit.text}” was refused: ${refused.reason}`);
  const after = sheetNow();
  for (const { row, step, text, check } of placed) {
    const got = textIn(row, columns.check, after);
    if (got !== check) stop(`expected “${check}” for “${text}” in ${step}, received “${got}”.`);
  }
}

/** The built script over the stand-in, with the invented sample class at work: what both pictures show. */
export function sampleAtWork(options: Pick<StandInOptions, 'code' | 'sidebarHtml' | 'clock'>): StandIn {
  const host = openStandIn({ ...options, name: 'Labrow: an invented school' });
  buildSample(host, () => {});
  typeEntries(host);
  return host;
}
