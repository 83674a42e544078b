import { expect, it } from 'vitest';
import { workFor } from '../../src/desk/acts.ts';
import type { File } from '../../src/desk/file/look.ts';
import { classColumns as at } from '../../src/workbook/layout.ts';
import { liveThreeWeeks } from '../journey/threeWeeks.ts';
import { paperFile } from './paperFile.ts';

it('three weeks of four classes lose nothing, and take three presses for a next lesson', () => {
  const file = paperFile();
  let page: File = { book: undefined };
  const { presses, lessons } = liveThreeWeeks({
    // A page stays open for a day.
    call: (name, ...about) => file.run(workFor(page, name, about, { afresh: true })),
    finish: file.finish,
    on(day) {
      const today = `2026-03-${day}`;
      Object.assign(file.state, { today, now: Date.parse(`${today}T10:00:00Z`) });
      page = { book: undefined };
    },
    type({ sheet, key, step }, text) {
      const row = file.rowOf(sheet, key, step);
      file.put(sheet, row, at.entry, text);
      file.put(sheet, row, at.lastEntry, { date: file.state.now });
    },
    entry: ({ sheet, key, step }) => String(file.cell(sheet, file.rowOf(sheet, key, step), at.entry)),
    people({ sheet, key }, text) {
      const row = file.rowOf(sheet, key);
      if (text !== undefined) file.put(sheet, row, at.who, text);
      return String(file.cell(sheet, row, at.who));
    },
    names: file.names,
    words: (sheet) =>
      file
        .sheetCalled(sheet)
        .cells.map((line) => line.join('|'))
        .join('\n'),
  });
  expect(lessons).toBe(5);
  expect(presses).toBe(24);
});
