import { sampleLesson } from '../lab/sampleLesson.ts';
import { classColumns as at } from '../workbook/layout.ts';
import { readClassSheet } from '../workbook/readClassSheet.ts';
import { valuesOf } from './applyWorkbook.ts';
import type { Sheet } from './spreadsheet.ts';
import { writeTexts } from './writeTexts.ts';

/**
 * Types the invented entries into a freshly made class sheet of the sample, one write for each block. A sheet that holds
 * any entry already is left alone, so nobody's typing is ever written over.
 */
export function writeSampleEntries({ sheet, className }: { sheet: Sheet; className: string }): void {
  const reading = readClassSheet(valuesOf(sheet));
  if (reading === undefined) return;
  const steps = reading.blocks.flatMap((block) => block.steps);
  if (steps.some(({ entry, who }) => entry !== '' || who !== '')) return;
  const entries = sampleLesson().entries.filter((entry) => entry.className === className);
  for (const block of reading.blocks) {
    const ofTeam = entries.filter(({ team }) => team === block.team);
    const first = block.steps[0];
    if (ofTeam.length === 0 || first === undefined) continue;
    const typed = block.steps.map(({ step }) => [ofTeam.find((entry) => entry.step === step)?.entry ?? '']);
    writeTexts(sheet.getRange(first.row, at.entry, typed.length, 1), typed);
  }
}
