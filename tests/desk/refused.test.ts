import { expect, it } from 'vitest';
import { workFor } from '../../src/desk/acts.ts';
import { freshTeamNames } from '../../src/desk/lesson/freshTeamNames.ts';
import { deskWords } from '../../src/desk/words.ts';
import { layoutVersion } from '../../src/workbook/layout.ts';
import { builtLesson, fern, moss, setup } from './builtLesson.ts';
import { type PaperFile, problemOf, valueIn } from './paperFile.ts';
import { said } from './said.ts';

/** Everything that the page asks at a press, or as a view is opened. */
const presses = (file: PaperFile) => [
  () => file.call('readLesson'),
  () => file.call('readSheets'),
  () => file.call('readClass', fern),
  () => file.call('readTeams'),
  () => file.call('startBuild', setup),
  () => file.call('nextLesson', setup),
  () => file.call('openEarlier', '2026-03-02.1'),
  () => file.call('removeSample'),
  () => file.call('hideTeachersSheets'),
  () => file.call('setAbsent', 'c1-t1', true),
  () => file.call('setOwnHelp', 'c1-t1', { level: '1' }),
  () => file.call('checkAgain'),
];

it('what the script refuses is handed on in its own words, whatever was pressed', () => {
  const refused = { ok: false, problem: { message: 'Another is at work.', reason: 'busy' } } as const;
  for (const press of presses(builtLesson())) expect(press().ok).toBe(press().ok);
  const file = builtLesson();
  file.refuse(refused);
  for (const press of presses(file)) expect(press()).toEqual(refused);
});

it('a file in which one sheet alone is of a newer layout is left alone', () => {
  const file = builtLesson();
  const sheet = file.sheetCalled(moss);
  if (sheet.tag !== null) sheet.tag = { ...sheet.tag, layout: layoutVersion + 1 };
  expect(problemOf(file.call('readClass', fern)).message).toBe(said(deskWords.newerFile));
  expect(problemOf(file.call('startBuild', setup)).message).toBe(said(deskWords.newerFile));
});

it('teacher’s sheets are hidden with a class in front, and refused where there is none', () => {
  const file = builtLesson();
  file.state.activeSheet = file.sheetCalled('Plan').id;
  valueIn(file.call('hideTeachersSheets'));
  expect(file.asked[file.asked.length - 1]).toMatchObject({
    call: 'show',
    wish: { sheetId: file.sheetCalled(fern).id },
  });
  file.state.sheets = file.state.sheets.filter(({ tag }) => tag?.kind !== 'class');
  expect(problemOf(file.call('hideTeachersSheets')).message).toBe(said(deskWords.noClassSheet));
});

it('links of classes lead into the file, also before it has an address', () => {
  const file = builtLesson();
  expect(valueIn(file.run(workFor({ book: undefined }, 'readSheets', []))).classes).toEqual(
    [fern, moss].map((name) => ({ name, address: `#gid=${file.sheetCalled(name).id}` })),
  );
});

it('names for new teams are none that somebody has, however that is written', () => {
  const [first = '', second = ''] = freshTeamNames(2);
  expect(freshTeamNames(1, [first.toLowerCase()])).toEqual([second]);
  expect(freshTeamNames(1, [first.toUpperCase()])).toEqual([second]);
});
