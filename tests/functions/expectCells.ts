import { expect } from 'vitest';
import type { CellResult, Filled } from '../../src/functions/entry.ts';

const grid = (cells: unknown): readonly (readonly unknown[])[] => (Array.isArray(cells) ? cells : [[cells]]);

/** The same cells: text as it stands, numbers to a relative 1e-12. */
export function expectCells(found: CellResult, wanted: Filled | readonly (readonly Filled[])[]): void {
  expect(Array.isArray(found)).toBe(Array.isArray(wanted));
  const near = grid(found).map((row, at) =>
    row.map((cell, place) => {
      const other = grid(wanted)[at]?.[place];
      if (typeof cell !== 'number' || typeof other !== 'number') return cell;
      return Math.abs(cell - other) <= 1e-12 * Math.max(Math.abs(cell), Math.abs(other)) ? other : cell;
    }),
  );
  expect(near).toEqual(grid(wanted));
}
