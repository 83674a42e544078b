import type { ClassReading } from '../../workbook/readClassSheet.ts';

/** How many cells of a class have an entry. */
export const entriesIn = (reading: ClassReading | undefined): number =>
  (reading?.blocks ?? []).flatMap(({ steps }) => steps).filter(({ entry }) => entry !== '').length;
