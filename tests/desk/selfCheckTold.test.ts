import { describe, expect, it } from 'vitest';
import { workFor } from '../../src/desk/acts.ts';
import { runWork } from '../../src/desk/runWork.ts';
import type { Trial } from '../../src/desk/selfCheck/finding.ts';
import { nativeCases } from '../../src/desk/selfCheck/nativeCases.ts';
import { type HostProbe, hostProbes } from '../../src/desk/selfCheck/selfCheck.ts';
import type { TrialAct, TrialChain, TrialFact } from '../../src/host/calls.ts';
import { valueIn } from './paperFile.ts';

const trial: Trial = {
  role: 'teacher',
  sheet: 'Selfcheck',
  separator: ',',
  functionsAnswer: true,
  shown: undefined,
  left: undefined,
};
const device = { now: Date.UTC(2026, 2, 2, 10), timeZone: 'Etc/UTC' };
type Told = Partial<TrialFact>;

/** What is said of a host that tells this, call by call, and every step that it was asked for. */
function probe(name: HostProbe, ...told: readonly (readonly Told[])[]) {
  const asked: (TrialAct | TrialChain)[][] = [];
  const finding = valueIn(
    runWork(workFor({ book: undefined }, 'probeFile', [{ ...trial }, name, device]), ({ call, wish }) => {
      if (call !== 'tryHost') throw new Error(`Expected steps of a trial, received ${call}.`);
      asked.push([...wish.steps]);
      return { ok: true, value: (told[asked.length - 1] ?? []).map((fact) => ({ ms: 1, ...fact })) };
    }),
  );
  return { ...finding, asked };
}
const ok: Told = { value: null };
const values = (cells: readonly (readonly unknown[])[]): readonly Told[] => [ok, ok, { value: cells }];
const refused: Told = { refused: 'Service is down' };

describe('what is said of a host that does otherwise', () => {
  it('names each formula of the sheet’s own that gave something else, and what it gave', () => {
    const given = nativeCases(trial.sheet).map(({ gives }) => [gives]);
    expect(probe('native', [], values(given)).verdict).toBe('expected');
    const { verdict, saw } = probe('native', [], values(given.map((line, at) => (at === 1 ? [200] : line))));
    expect([verdict, saw]).toEqual([
      'different',
      `1 of ${given.length} formulas gave something else. A name by its line: “200” instead of “200”.`,
    ]);
    // What comes from the cells below counts only as it was typed there, so they are plain text.
    const [first] = probe('native', [], values(given)).asked[0] ?? [];
    expect(first).toMatchObject({
      calls: [
        ['getRange', 'A40:C43'],
        ['setNumberFormat', '@'],
        ['setValues', expect.arrayContaining([['t2', '200', 'close']])],
      ],
    });
  });
  it('names each kind of cell that arrived otherwise in a function', () => {
    const right =
      'String | String | Boolean true | Date | Number 0.05 | String #DIV/0! | String 0.400 | Number 7 | 2 x 2 of String';
    const say = (told: string) => probe('arguments', [], values([[told]]));
    expect(say(right).verdict).toBe('expected');
    expect(say(right.replace('String #DIV/0!', 'Error'))).toMatchObject({
      verdict: 'different',
      saw: expect.stringMatching(/^[^.]*error[^.]* arrived as “Error”\.$/i),
    });
    expect(say(right.replace('Number 7', '')).saw).toMatch(/arrived as nothing\.$/);
    const written = JSON.stringify(say(right).asked[0]);
    // A cell with an error is one only where the formula for it is worked out.
    expect(written).toContain('[["getRange","E10"],["setNumberFormat","General"],["setValues",[["=1/0"]]]]');
  });
  it('tells marks that are gone or doubled after a sheet was renamed, and whether a duplicate has one', () => {
    const say = (renamed: Told, twin: Told) => probe('tags', [ok, ok, renamed, ok, twin]);
    expect(say({ value: 1 }, { value: 1 })).toMatchObject({
      verdict: 'expected',
      saw: expect.stringMatching(/takes a second mark/),
    });
    expect(say({ value: 1 }, { value: 0 })).toMatchObject({
      verdict: 'expected',
      saw: expect.stringMatching(/goes without a mark/),
    });
    expect(say({ value: 0 }, { value: 0 })).toMatchObject({
      verdict: 'different',
      saw: expect.stringMatching(/were 0 marks/),
    });
    expect(say({ value: 2 }, { value: 1 })).toMatchObject({
      verdict: 'different',
      saw: expect.stringMatching(/were 2 marks/),
    });
    expect(say(refused, ok)).toMatchObject({ verdict: 'not tried', saw: 'The host refused: Service is down.' });
  });
  it('tells a list that refuses, and tints that are missing or doubled', () => {
    const say = (kept: unknown, tints: unknown) => probe('rules', [ok, { value: kept }, ok, { value: tints }]);
    expect(say('three', 1).verdict).toBe('expected');
    expect(say('one', 1)).toMatchObject({
      verdict: 'different',
      saw: expect.stringMatching(/held “one”, and there were 1 tints/),
    });
    expect(say('three', 0)).toMatchObject({
      verdict: 'different',
      saw: expect.stringMatching(/held “three”, and there were 0 tints/),
    });
    expect(say('three', 2).verdict).toBe('different');
  });
  it('says that it could not be tried, or is different, where the host tells nothing', () => {
    expect(probe('tags', [ok, ok, { value: 1 }]).saw).toMatch(/goes without a mark/);
    expect(probe('rules', [ok, { value: 'three' }]).saw).toMatch(/there were 0 tints/);
    const verdicts = hostProbes.filter((name) => name !== 'desk').map((name) => [name, probe(name).verdict]);
    expect(verdicts.filter(([, verdict]) => verdict === 'expected')).toEqual([]);
  });
});

describe('what the host is asked for', () => {
  it('is given time between two looks at cells that are loading, and none before the first', () => {
    const { asked } = probe('arguments', [], values([['Loading...']]), values([['Loading...']]), values([['x']]));
    const waits = asked.slice(1).map(([first]) => first);
    expect(waits).toEqual([0, 1500, 1500].map((ms) => ({ on: 'tools', calls: [['sleep', ms]] })));
  });
  it('are formulas in cells that are no plain text, before anything is written there', () => {
    const { asked } = probe('formulas', [], values([[3], [3]]));
    expect(asked[0]?.[0]).toEqual({
      on: 'sheet',
      calls: [
        ['getRange', 'J5:J7'],
        ['setNumberFormat', 'General'],
      ],
    });
  });
  it('is a fresh sheet before marks are left for a copy, so that nothing that was tried goes along', () => {
    const steps: unknown[] = [];
    runWork(workFor({ book: undefined }, 'endSelfCheck', [trial, true]), ({ wish }) => {
      const { steps: now } = wish as { steps: unknown[] };
      steps.push(...now);
      return { ok: true, value: now.map(() => ({ ms: 1, value: 0 })) };
    });
    expect(steps[0]).toEqual({ do: 'begin' });
    expect(steps).not.toContainEqual(expect.objectContaining({ do: 'end' }));
  });
  it('is to forget the note of an earlier run as a new one begins', () => {
    const steps: unknown[] = [];
    runWork(workFor({ book: undefined }, 'beginSelfCheck', ['teacher']), ({ wish }) => {
      const { steps: now } = wish as { steps: unknown[] };
      steps.push(...now);
      return { ok: true, value: now.map(() => ({ ms: 1, value: 'Selfcheck' })) };
    });
    expect(steps).toContainEqual({
      on: 'store',
      calls: [['getDocumentProperties'], ['deleteProperty', 'labrow-trial']],
    });
  });
});
