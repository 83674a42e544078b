import { hazardDataAge } from '../../chemistry/hazardDataAge.ts';
import { hazardSource } from '../../chemistry/hazardSource.ts';
import { preparationTexts as words } from '../texts/preparation.ts';
import type { DayPreparation } from './dayPreparation.ts';
import type { PreparationRow } from './preparationRows.ts';

/**
 * What stands behind the cautions of the day, for the teacher alone: for each substance its sources and doubts, how staff
 * handle it and where it goes after treatment; then the date of the data.
 *
 * @param today - As `2027-12-31`: data that is too old says so.
 */
export function hazardSourceRows({ cautions }: DayPreparation, today: string): readonly PreparationRow[] {
  const row = (what: string, note: string): PreparationRow => ({
    section: 'cautions',
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
      const what = words.behind(name);
      return [
        row(what, words.source(found.source)),
        row(what, words.handling(found.handling)),
        row(what, words.staffWaste(found.drain)),
      ];
    }),
    row(words.hazardData, [words.hazardDate(date), ...(isOld ? [words.hazardOld] : [])].join(' ')),
  ];
}
