import { hazardDataAge } from '../../chemistry/hazardDataAge.ts';
import { hazardSource } from '../../chemistry/hazardSource.ts';
import { preparationTexts as words } from '../texts/preparation.ts';
import type { DayPreparation } from './dayPreparation.ts';
import type { PreparationRow } from './preparationRows.ts';

/**
 * What stands behind the cautions of the day, for staff alone: for each substance how staff handle it and where it goes
 * after treatment, then its sources and doubts; last the date of the data.
 *
 * @param today - As `2027-12-31`: data that is too old says so.
 */
export function hazardSourceRows({ cautions }: DayPreparation, today: string): readonly PreparationRow[] {
  const row = (what: string, note: string, section: PreparationRow['section'] = 'sources'): PreparationRow => ({
    section,
    what,
    amount: undefined,
    withSpare: undefined,
    unit: '',
    note,
  });
  const names = new Set(cautions.flatMap((block) => block.cautions.listedNames));
  const { date, isOld } = hazardDataAge(today);
  return [
    ...[...names].flatMap((name) => {
      const found = hazardSource(name);
      if (found === undefined) return [];
      return [
        row(words.forStaff(name), words.handling(found.handling), 'cautions'),
        row(words.forStaff(name), words.staffWaste(found.drain), 'cautions'),
        row(words.behind(name), words.source(found.source)),
      ];
    }),
    row(words.hazardData, [words.hazardDate(date), ...(isOld ? [words.hazardOld] : [])].join(' ')),
  ];
}
