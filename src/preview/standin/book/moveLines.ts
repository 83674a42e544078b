import { type Area, cellKey, columnOf, rowOf } from '../address.ts';
import { type LineChange, type movedLines, remapped } from '../movedLines.ts';
import type { CellState, ProtectionState, SheetState } from '../sheetState.ts';

type MovedLines = ReturnType<typeof movedLines>;

/**
 * Moves all that a sheet keeps by place, after the engine inserted or deleted its rows or columns.
 * Returns the cells that were filled by a formula which is gone.
 */
export function moveLines(sheet: SheetState, change: LineChange, lines: MovedLines): readonly number[] {
  const { moved, movedKey, movedArea } = lines;
  const orphans: number[] = [];
  sheet.cells = remapped(sheet.cells, movedKey);
  sheet.results = remapped(sheet.results, movedKey);
  sheet.blocked = remapped(sheet.blocked, movedKey);
  sheet.spilled = new Map(
    [...sheet.spilled].flatMap(([key, spilled]) => {
      const to = movedKey(key);
      const from = movedKey(spilled.from);
      if (to === undefined) return [];
      if (from === undefined) {
        orphans.push(to);
        return [];
      }
      return [[to, { ...spilled, from }] as const];
    }),
  );
  const movedAreas = (areas: readonly Area[]): Area[] => areas.flatMap((area) => movedArea(area) ?? []);
  sheet.merges = movedAreas(sheet.merges);
  sheet.rules = sheet.rules
    .map((rule) => ({ ...rule, areas: movedAreas(rule.areas) }))
    .filter((rule) => rule.areas.length > 0);
  sheet.protections = sheet.protections.flatMap((protection): ProtectionState[] => {
    const area = protection.area && movedArea(protection.area);
    if (protection.area && !area) return [];
    return [{ ...protection, area, unprotected: movedAreas(protection.unprotected) }];
  });
  const { along, at, by } = change;
  if (along === 'row') {
    sheet.rows += by;
    sheet.rowHeights = remapped(sheet.rowHeights, moved);
    sheet.forcedRows = new Set([...sheet.forcedRows].flatMap((row) => moved(row) ?? []));
    sheet.hiddenRows = new Set([...sheet.hiddenRows].flatMap((row) => moved(row) ?? []));
    if (at <= sheet.frozenRows) sheet.frozenRows = Math.max(0, sheet.frozenRows + by);
  } else {
    sheet.columns += by;
    sheet.columnWidths = remapped(sheet.columnWidths, moved);
    sheet.hiddenColumns = new Set([...sheet.hiddenColumns].flatMap((column) => moved(column) ?? []));
    if (at <= sheet.frozenColumns) sheet.frozenColumns = Math.max(0, sheet.frozenColumns + by);
  }
  return orphans;
}

/** New rows look like the row above them, new columns like the one to their left: cells and what they take over. */
export function inheritedLooks(
  sheet: SheetState,
  { along, at, by }: LineChange,
): { readonly key: number; readonly looks: Pick<CellState, 'format' | 'validation'> }[] {
  const model = at > 1 ? at - 1 : at + by;
  return [...sheet.cells].flatMap(([key, { format, validation }]) => {
    const line = along === 'row' ? rowOf(key) : columnOf(key);
    if (line !== model || (!format && !validation)) return [];
    return Array.from({ length: by }, (_, offset) => ({
      key: along === 'row' ? cellKey(at + offset, columnOf(key)) : cellKey(rowOf(key), at + offset),
      looks: { ...(format ? { format } : {}), ...(validation ? { validation } : {}) },
    }));
  });
}
