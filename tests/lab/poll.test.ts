import { describe, expect, it } from 'vitest';
import type { PollAnswer } from '../../src/lab/poll/pollAnswer.ts';
import { answersOf, dayBefore, pollChange, pollDays, pollLine, pollSummary } from '../../src/lab/poll/pollSummary.ts';
import { pollTexts } from '../../src/lab/texts/poll.ts';
import { fleschKincaidGrade } from './readingGrade.ts';

const [fully = '', mostly = '', little = '', no = ''] = pollTexts.scale;
const answer = (parts: Partial<PollAnswer>): PollAnswer => ({
  day: '2026-03-03',
  className: 'Fern class',
  from: 'one student',
  marks: ['', '', '', ''],
  openLine: '',
  ...parts,
});
const marked = (...marks: string[]) => answer({ marks });

describe('pollSummary', () => {
  it.each([
    {
      name: 'counts each word of the scale by statement',
      answers: [marked(fully, no, little, mostly), marked(fully, no, mostly, '')],
      first: { counts: [2, 0, 0, 0], other: 0, marked: 2, agree: 2 },
      last: { counts: [0, 1, 0, 0], other: 0, marked: 1, agree: 1 },
    },
    {
      name: 'takes fully and mostly for agreeing, a little and no for not',
      answers: [marked(fully), marked(mostly), marked(little), marked(no)],
      first: { counts: [1, 1, 1, 1], other: 0, marked: 4, agree: 2 },
      last: { counts: [0, 0, 0, 0], other: 0, marked: 0, agree: 0 },
    },
    {
      name: 'reads capital letters, and keeps other words apart from what was left out',
      answers: [marked('Agree Fully', '', '', 'no idea'), marked('', '', '', '=1+1')],
      first: { counts: [1, 0, 0, 0], other: 0, marked: 1, agree: 1 },
      last: { counts: [0, 0, 0, 0], other: 2, marked: 0, agree: 0 },
    },
    {
      name: 'is empty without answers',
      answers: [],
      first: { counts: [0, 0, 0, 0], other: 0, marked: 0, agree: 0 },
      last: { counts: [0, 0, 0, 0], other: 0, marked: 0, agree: 0 },
    },
  ])('$name', ({ answers, first, last }) => {
    const summary = pollSummary(answers);
    expect(summary.answers).toBe(answers.length);
    expect(summary.statements[0]).toEqual({ statement: pollTexts.statements[0], ...first });
    expect(summary.statements[3]).toEqual({ statement: pollTexts.statements[3], ...last });
  });

  it('keeps open lines as they were written, and counts who answered', () => {
    const lines = ['=IMPORTXML("x")', '<b>bold</b>', 'why does the water not count?'];
    const summary = pollSummary([
      ...lines.map((openLine) => answer({ openLine })),
      answer({ from: 'A team' }),
      answer({ from: '' }),
    ]);
    expect(summary.openLines).toEqual(lines);
    expect(summary).toMatchObject({ answers: 5, fromStudents: 3, fromTeams: 1 });
  });
});

describe('days and classes', () => {
  const answers = [
    answer({ day: '2026-03-02' }),
    answer({ day: '2026-03-04', className: 'Moss class' }),
    answer({ day: '' }),
    answer({ day: '2026-03-03' }),
    answer({ day: '2026-03-03', className: 'Moss class' }),
  ];
  it('lists days from the latest on, for one class or for all', () => {
    expect(pollDays(answers, '')).toEqual(['2026-03-04', '2026-03-03', '2026-03-02', '']);
    expect(pollDays(answers, 'Fern class')).toEqual(['2026-03-03', '2026-03-02', '']);
  });
  it.each([
    { className: 'Fern class', day: '2026-03-03', before: '2026-03-02', count: 1 },
    { className: 'Moss class', day: '2026-03-03', before: undefined, count: 1 },
    { className: '', day: '2026-03-04', before: '2026-03-03', count: 1 },
    { className: '', day: '2026-03-03', before: '2026-03-02', count: 2 },
    { className: '', day: '', before: undefined, count: 1 },
  ])('of “$className” on “$day” finds $count and looks back to $before', ({ className, day, before, count }) => {
    expect(dayBefore(answers, { className, day })).toBe(before);
    expect(answersOf(answers, { className, day })).toHaveLength(count);
  });
});

describe('pollChange', () => {
  const of = (agree: number, others: number) =>
    pollSummary([
      ...Array.from({ length: agree }, () => marked(mostly)),
      ...Array.from({ length: others }, () => marked(little)),
    ]);
  it.each([
    { now: of(7, 3), before: of(4, 6), change: 'more' },
    { now: of(4, 6), before: of(7, 3), change: 'fewer' },
    { now: of(6, 4), before: of(5, 5), change: 'more' },
    { now: of(11, 9), before: of(10, 10), change: 'alike' },
    { now: of(10, 10), before: of(1, 1), change: 'alike' },
    { now: of(3, 0), before: of(0, 0), change: 'unknown' },
    { now: of(0, 0), before: of(3, 0), change: 'unknown' },
  ])('says $change', ({ now, before, change }) => {
    expect(pollChange(now, before)[0]).toBe(change);
  });
});

describe('pollLine', () => {
  it('names what most and what fewest agree with, in counts', () => {
    const summary = pollSummary([marked(fully, no, mostly, ''), marked(fully, little, no, '')]);
    expect(pollLine(summary)).toBe(
      '2 answers. Most agreement with “I knew what to do next.” (2 of 2), least with “I can explain what is in our flask.” (0 of 2).',
    );
  });
  it.each([
    [[marked(fully, mostly, fully, '')], '1 answer. Everybody agreed with every statement.'],
    [[marked(no, little, '', '')], '1 answer. Nobody agreed with any statement.'],
    [
      [marked(fully, no, no, ''), marked(no, mostly, fully, '')],
      '2 answers. The same agreement with every statement (1 of 2).',
    ],
  ])('singles no statement out where all fare alike', (answers, words) => {
    expect(pollLine(pollSummary(answers))).toBe(words);
  });
  it('is empty where nobody marked anything', () => {
    expect(pollLine(pollSummary([]))).toBe('');
    expect(pollLine(pollSummary([answer({ openLine: 'hm' })]))).toBe('');
  });
});

describe('the poll’s words', () => {
  it('are short, plain, and never about a person', () => {
    expect(pollTexts.statements).toHaveLength(4);
    expect(fleschKincaidGrade(pollTexts.statements.join(' '))).toBeLessThanOrEqual(8);
    for (const words of [...pollTexts.statements, ...pollTexts.scale]) {
      expect(words.length).toBeLessThanOrEqual(50);
      expect(words).not.toMatch(/^[=+\-@]/);
      expect(words).not.toMatch(/\b(?:name|teacher)\b/i);
    }
  });
});
