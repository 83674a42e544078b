import type { SheetView } from '../view.ts';
import { type Place, readCellName } from './cellName.ts';

export type Destination =
  | { readonly kind: 'cell'; readonly sheet: number; readonly place: Place }
  | { readonly kind: 'outside'; readonly address: string };

/** Where a link leads: a sheet and cell of this workbook (`#gid=…&range=…` or `#'Sheet'!A1`), or an http address. */
export function destination(link: string, sheets: Iterable<SheetView>): Destination | undefined {
  if (/^https?:\/\//i.test(link)) return { kind: 'outside', address: link };
  const inside = /^#(.+)$/.exec(link)?.[1];
  if (!inside) return undefined;
  const all = [...sheets];
  const fields = new URLSearchParams(inside);
  const gid = fields.get('gid');
  if (gid !== null) {
    const range = fields.get('range') ?? '';
    const place = range === '' ? { row: 1, column: 1 } : readCellName(range.replace(/^.*!/, ''));
    const sheet = all.find(({ id }) => String(id) === gid);
    return sheet && place ? { kind: 'cell', sheet: sheet.id, place } : undefined;
  }
  const [, quoted, plain, cell] = /^(?:'((?:[^']|'')+)'|([^!]+))!(.+)$/.exec(unescaped(inside)) ?? [];
  const name = quoted?.replace(/''/g, "'") ?? plain;
  const sheet = all.find((one) => one.name === name);
  const place = readCellName(cell ?? '');
  return sheet && place ? { kind: 'cell', sheet: sheet.id, place } : undefined;
}

/** What may stand in an anchor: addresses that lead somewhere; `javascript:`, `data:` and their like lead nowhere. */
export const hrefOf = (link: string): string | undefined => (/^(?:https?:\/\/|#.)/i.test(link) ? link : undefined);

function unescaped(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    // A percent sign that escapes nothing is a percent sign.
    return text;
  }
}
