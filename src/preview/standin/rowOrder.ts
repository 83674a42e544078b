import type { Area } from './address.ts';
import type { Value } from './book/engine.ts';

const rank = (value: Value): number => {
  if (value === '') return 4;
  if (typeof value === 'number') return 0;
  if (typeof value === 'string') return 1;
  return typeof value === 'boolean' ? 2 : 3;
};

/** The rows of an area in sorted order: numbers, then texts, then logical values; blanks stay last either way. */
export function rowOrder(
  area: Area,
  valueIn: (row: number) => Value,
  { ascending, language }: { readonly ascending: boolean; readonly language: string },
): number[] {
  const compare = new Intl.Collator(language, { sensitivity: 'base' }).compare;
  const rows = Array.from({ length: area.rows }, (_, index): { row: number; value: Value } => ({
    row: area.row + index,
    value: valueIn(area.row + index),
  }));
  rows.sort(({ value: first }, { value: second }) => {
    const ranks = rank(first) - rank(second);
    if (first === '' || second === '') return ranks;
    const bothTexts = typeof first === 'string' && typeof second === 'string';
    const difference =
      ranks || (bothTexts ? compare(first, second) : Number(first as number) - Number(second as number));
    return ascending ? difference : -difference;
  });
  return rows.map(({ row }) => row);
}
