import { setup } from '../host/setup.ts';
import { fillRow } from './builtLesson.ts';
import { type PaperFile, paperFile, valueIn } from './paperFile.ts';

const animals = ['Otter', 'Heron', 'Newt', 'Carp', 'Swift', 'Stoat', 'Raven', 'Adder'];
const classes = [
  { name: 'Fern class', teams: animals },
  { name: 'Moss class', teams: animals.slice(0, 7) },
  { name: 'Reed class', teams: animals.slice(0, 7) },
];

/** An invented day of 22 teams with a salt of many cautions, half-way through: every team has three rows and a question. */
export function fullDay(): PaperFile {
  const file = paperFile();
  const givens = { ...setup.givens, formula: 'AgNO3', ion: 'Ag+' };
  file.finish(file.call('startBuild', { ...setup, ownNumbers: true, givens, classes }));
  const steps = valueIn(file.call('readClass', 'Fern class')).teams[0]?.steps ?? [];
  classes.forEach(({ name: sheet, teams }, place) => {
    teams.forEach((_, index) => {
      const key = `c${place + 1}-t${index + 1}`;
      steps.forEach(({ id }, row) => {
        const open = row === 3 + (index % 4);
        fillRow(
          file,
          { sheet, key, step: id },
          row < 3 + (index % 4)
            ? { entry: '1', check: 'on target', tries: 1, time: '2026-03-02T10:10:00Z' }
            : { check: open ? 'not yet' : 'blank', ...(open ? { entry: '2', tries: 4, help: String(index % 4) } : {}) },
        );
      });
    });
  });
  return file;
}
