import { describe, expect, it } from 'vitest';
import { activityById } from '../../src/lab/lesson/activities.ts';
import { builtLesson, fern, fillRow, moss, setup } from './builtLesson.ts';
import { fullDay } from './fullDay.ts';
import { paperFile, problemOf, valueIn } from './paperFile.ts';

/** Read by several tests and changed by none. */
const day = fullDay();
const { teams, stepCount: scored } = valueIn(day.call('readClass', fern));
const step = (place: number) => teams[0]?.steps[place]?.title ?? '';

describe('the page for a cover teacher', () => {
  it('says what, for whom, where each class stands and where most of its teams are', () => {
    const { classes, activity: title, date, clock } = valueIn(day.call('readCover'));
    expect(title).toBe(activityById(setup.activity)?.title);
    expect([date, clock]).toEqual(['2026-03-02', '10:15']);
    expect(classes.map(({ className, teams, rows }) => [className, teams, rows])).toEqual([
      ['Fern class', 8, 8 * scored],
      ['Moss class', 7, 7 * scored],
      ['Reed class', 7, 7 * scored],
    ]);
    // Of eight teams two each have 3, 4, 5 and 6 rows on target; of seven only one has 6.
    expect(classes.map(({ rowsDone }) => rowsDone)).toEqual([36, 30, 30]);
    expect(classes[1]?.open).toEqual([3, 4, 5].map((place) => ({ title: step(place), teams: 2 })));
  });
  it('names the first three teams to talk to, and how many come after them', () => {
    const [first] = valueIn(day.call('readCover')).classes;
    expect(first?.talkFirst.map(({ team }) => team)).toEqual(['Carp', 'Adder', 'Newt']);
    expect(first?.talkMore).toBe(5);
  });
  it('holds cautions, waste and what to have ready, with spare, and no name of a student', () => {
    const file = builtLesson();
    fillRow(file, { step: 'molar mass' }, { entry: '119.0', check: 'close', who: 'Ana' });
    const view = valueIn(file.call('readCover'));
    expect(view.cautions.length).toBeGreaterThan(0);
    expect(view.safety).toMatch(/safety data sheet/);
    expect(view.waste.map(({ what }) => what)).toContain('leftovers');
    expect(view.ready.find(({ what }) => what === 'volumetric flask 200 mL')?.amount).toBeGreaterThan(0);
    expect(view.ready.find(({ what }) => what === 'KBr, solid')?.unit).toBe('g');
    expect(JSON.stringify(view)).not.toContain('Ana');
  });
  it('leaves out whoever is away today, and a row that is never scored', () => {
    const file = builtLesson();
    valueIn(file.call('setAbsent', 'c2-t1', true));
    const [first, second] = valueIn(file.call('readCover')).classes;
    expect(first).toMatchObject({ className: fern, open: [{ title: step(0), teams: 2 }] });
    expect(second).toMatchObject({ className: moss, open: [] });
  });
  it('counts no practice', () => {
    const file = builtLesson();
    const before = valueIn(file.call('readCover'));
    file.finish(file.call('addPractice', fern));
    expect(valueIn(file.call('readCover'))).toEqual(before);
  });
  it('is refused where there is no lesson', () => {
    expect(problemOf(paperFile().call('readCover')).message).not.toBe('');
  });
});
