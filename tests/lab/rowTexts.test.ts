import { describe, expect, it } from 'vitest';
import { letteredShown } from '../../src/lab/bench/letteredShown.ts';
import { allProcedures, procedureByName } from '../../src/lab/bench/procedures.ts';
import { allQuestions } from '../../src/lab/bench/questions.ts';
import { allActivities } from '../../src/lab/lesson/activities.ts';
import type { Shown } from '../../src/lab/lesson/activity.ts';
import { classWidths } from '../../src/workbook/classWidths.ts';
import { classColumns } from '../../src/workbook/layout.ts';
import { looks } from '../../src/workbook/looks.ts';
import { heightOf } from '../../src/workbook/textHeight.ts';

const values: Readonly<Record<string, string>> = { formula: 'CuSO4·5H2O', purity: '94.5', 'target volume': '250' };
const plain = (pieces: readonly Shown[]): string =>
  pieces.map((piece) => (typeof piece === 'string' ? piece : (values[piece.given] ?? '0.0450'))).join('');

const width = classWidths[classColumns.task - 1] ?? 0;
const letteredSteps = allActivities().flatMap(({ id, steps }) =>
  steps.flatMap((step) => (step.kind === 'ordered' || step.kind === 'chosen' ? [{ id, step }] : [])),
);
const actions = allProcedures().flatMap(({ name, actions: own }) =>
  own.map(({ text }) => ({ name, text: plain(text) })),
);
const options = allQuestions().flatMap(({ name, right, others }) =>
  [right, ...others].map(({ text }) => ({ name, text: plain(text) })),
);

describe('actions and options', () => {
  it('are a few words each, in lower case, with no full stop', () => {
    for (const { name, text } of [...actions, ...options]) {
      const about = `${name}: ${text}`;
      expect(text, about).not.toMatch(/[.;!?]$/);
      expect(text, about).toMatch(/^[a-z]/);
      expect(text.split(' ').length, about).toBeLessThanOrEqual(8);
      expect(text.length, about).toBeLessThanOrEqual(39);
    }
  });

  it('are told apart by their words', () => {
    for (const { name } of allProcedures()) {
      const own = actions.filter((action) => action.name === name).map(({ text }) => text);
      expect(new Set(own).size).toBe(own.length);
    }
  });

  // Eight lines: a row that is read at the bench is no page.
  it.each(letteredSteps)('fit their row in $id, $step.id, whatever the letters of the team', ({ step }) => {
    for (const key of ['', ...Array.from({ length: 30 }, (_, team) => `c1-t${team}`)]) {
      const text = plain(letteredShown(step, key));
      expect(heightOf(text, { width, size: looks.letters.size }), text).toBeLessThanOrEqual(153);
      expect(text.length, text).toBeLessThanOrEqual(340);
    }
  });
});

describe('what keeps people safe', () => {
  const textOf = (name: string): string =>
    [...procedureByName(name).actions.map(({ text }) => plain(text)), procedureByName(name).leftovers].join('\n');

  it('has goggles first in every procedure', () => {
    for (const { name, actions: own, rules } of allProcedures()) {
      expect([name, own[0]?.id]).toEqual([name, 'protect']);
      expect(plain(own[0]?.text ?? [])).toContain('goggles');
      expect(rules.some(({ before, weight }) => before === 'protect' && weight === 'safety')).toBe(true);
    }
  });

  it('has a filler wherever a pipette is used, and tongs where glass gets hot', () => {
    for (const { name } of allProcedures()) {
      const usesPipette = /pipette/.test(textOf(name).replace(/pipette filler/g, ''));
      expect([name, usesPipette, /filler/.test(textOf(name))]).toEqual([name, usesPipette, usesPipette]);
      const heats = /\bheat (?!-)/.test(textOf(name));
      expect([name, heats, /tongs/.test(textOf(name))]).toEqual([name, heats, heats]);
    }
    expect(textOf('weighed residue')).toContain('tongs');
    expect(textOf('serial dilution')).toContain('filler');
  });

  it('says where rinsings and leftovers go, and throws nothing away', () => {
    for (const { name } of allProcedures()) {
      expect(textOf(name)).toContain('waste beaker');
      expect(textOf(name)).not.toMatch(/throw|away|sink|drain/);
    }
  });

  it('asks nobody to taste what stands in a laboratory', () => {
    for (const { right, others, name } of allQuestions()) {
      for (const { reply } of [right, ...others]) {
        for (const text of typeof reply === 'string' ? [reply] : Object.values(reply)) {
          expect([name, text]).toEqual([name, expect.not.stringMatching(/tast|sip|swallow|drink/i)]);
          if (/spoon/.test(text)) expect(text).toContain('soup at home');
        }
      }
    }
  });
});
