import { describe, expect, it } from 'vitest';
import type { Outcome } from '../../src/desk/outcome.ts';
import { nativeAt, nativeCases } from '../../src/desk/selfCheck/nativeCases.ts';
import { reportText } from '../../src/desk/selfCheck/reportText.ts';
import { withoutNames } from '../../src/desk/selfCheck/shownCell.ts';
import type { TrialChain, TrialFact } from '../../src/host/calls.ts';
import { copyOfFile } from '../../src/preview/standin/copyOfFile.ts';
import type { StandIn } from '../../src/preview/standin/openStandIn.ts';
import { nativeFunctions } from '../../src/workbook/formula.ts';
import { layoutVersion } from '../../src/workbook/layout.ts';
import { answerOf, buildSetup, open } from '../host/bench.ts';
import { sheetState, typedInto, workbookText } from '../host/cells.ts';
import { setup } from '../host/setup.ts';
import { deskAt, findingOf, scratchOf, tryOut } from './tryOut.ts';

const clock = () => new Date('2026-03-02T10:00:00Z');
const built = (() => {
  const host = open({ clock });
  buildSetup(host, setup);
  return host.save();
})();

/** A report without how many seconds things took, which differs from machine to machine, and without the layout. */
const steady = (report: string): string => report.replace(/[\d.]+ s\b/g, '… s').replace(/Layout \d+/, 'Layout …');

describe('the self-check', () => {
  it('finds all as expected in a file with a lesson, and leaves the file as it was', () => {
    const host = open({ saved: built, clock });
    const before = workbookText(host);
    const { findings, report } = tryOut(host);
    expect(steady(report)).toMatchSnapshot();
    expect(findings.filter(({ verdict }) => verdict === 'different')).toEqual([]);
    expect(workbookText(host)).toBe(before);
    expect(host.triggerErrors).toEqual([]);
  });
  it('goes as well from a student’s account, which is kept out of the teacher’s part', () => {
    const host = open({ saved: built, clock });
    const before = workbookText(host);
    const { findings } = tryOut(host, { seat: 'student' });
    expect(findingOf(findings, 'desk')).toMatchObject({ verdict: 'expected', saw: expect.stringMatching(/kept out/) });
    expect(findings.filter(({ verdict }) => verdict === 'different')).toEqual([]);
    expect(workbookText(host)).toBe(before);
  });
  it('says so where a student is let in as one who teaches', () => {
    const host = open({ saved: built, clock });
    for (const protection of sheetState(host, 'Labrow teacher').protections) {
      protection.editors = ['teacher@class.invalid', 'student@class.invalid'];
    }
    const { findings, report } = tryOut(host, { seat: 'student', typed: 0 });
    expect(findingOf(findings, 'desk').verdict).toBe('different');
    expect(report).toMatch(/take everybody off who is not to teach/);
  });
  it('waits for results that come between its calls, and says so where none comes', () => {
    const late = open({ delays: true });
    const { findings } = tryOut(late, { between: () => late.release(40) });
    expect(findingOf(findings, 'functions').verdict).toBe('expected');
    expect(findingOf(findings, 'spill').verdict).toBe('expected');
    expect(findingOf(findings, 'crowd').verdict).toBe('expected');
    const never = tryOut(open({ delays: true }));
    expect(findingOf(never.findings, 'functions')).toMatchObject({
      verdict: 'different',
      saw: expect.stringMatching(/No answer after/),
    });
    expect(findingOf(never.findings, 'crowd').verdict).toBe('not tried');
  });
  it('holds nothing that was typed, no address, and no number of the file', () => {
    const { report } = tryOut(open({ saved: built, clock, fileId: '1AbCdEfGhIjKlMnOpQrStUvWxYz0123456789' }));
    expect(report).not.toMatch(/1AbCd|Otter|Heron|Newt|Fern|@/);
    expect(
      withoutNames('ask anna@school.invalid about 1AbCdEfGhIjKlMnOpQrStUvWxYz0123456789 at https://x.invalid/y'),
    ).toBe('ask (an address) about (a number of the host) at (a link)');
  });
});

describe('the self-check in trouble', () => {
  it('says that a copy has lost its marks, and what that means', () => {
    const first = open({ saved: built, clock });
    const left = tryOut(first, { leaves: true });
    expect(findingOf(left.findings, 'copy').verdict).toBe('not tried');
    const copied = (tags: boolean) => open({ saved: copyOfFile(first.save(), { tags }), fileId: 'copy', clock });
    const lost = copied(true);
    const inCopy = tryOut(lost);
    expect(steady(inCopy.report)).toMatchSnapshot();
    expect(findingOf(inCopy.findings, 'copy')).toMatchObject({
      verdict: 'different',
      saw: 'In this copy the marks on sheets are gone, the script’s notes are gone, and the protection of a sheet is there.',
    });
    expect(scratchOf(lost)).toBeUndefined();
    expect(findingOf(tryOut(copied(false)).findings, 'copy').verdict).toBe('expected');
    // In the file itself the next run takes the marks away.
    expect(findingOf(tryOut(first).findings, 'copy').saw).toMatch(/still in the file that they were made in/);
    expect(scratchOf(first)).toBeUndefined();
    expect(workbookText(first)).toBe(workbookText(open({ saved: built, clock })));
  });
  it('says that functions do not answer, and asks no more of them', () => {
    const host = open();
    host.failCalls('MOLARMASS', 1000);
    host.failCalls('TRYHOST', 1000);
    const { findings, report } = tryOut(host);
    expect(steady(report)).toMatchSnapshot();
    expect(findingOf(findings, 'functions').verdict).toBe('different');
    for (const name of ['arguments', 'spill', 'crowd'] as const)
      expect(findingOf(findings, name).verdict).toBe('not tried');
    expect(report).toContain('Do not begin a lesson with this file');
  });
  it('says that nothing is counted where triggers do not fire', () => {
    const { findings, report } = tryOut(open({ troubles: { triggersOff: true } }));
    expect(steady(report)).toMatchSnapshot();
    expect(findingOf(findings, 'trigger')).toMatchObject({
      verdict: 'different',
      saw: '0 of 10 entries that you typed were counted.',
    });
    expect(findingOf(tryOut(open(), { typed: 0 }).findings, 'trigger').verdict).toBe('not tried');
    expect(findingOf(tryOut(open(), { typed: 7 }).findings, 'trigger').saw).toMatch(/All 7 entries/);
  });
  it('goes on with the separator that it finds', () => {
    const { findings, report } = tryOut(open({ locale: 'de_DE' }));
    expect(steady(report)).toMatchSnapshot();
    expect(findingOf(findings, 'formulas').saw).toContain('takes “;” between its arguments');
    expect(findingOf(findings, 'native').verdict).toBe('expected');
    expect(findingOf(findings, 'arguments').verdict).toBe('expected');
  });
  it('says that formulas read back otherwise than written', () => {
    const { findings } = tryOut(open({ troubles: { quotesDropped: true } }));
    expect(findingOf(findings, 'formulas')).toMatchObject({
      verdict: 'different',
      saw: expect.stringMatching(/reads back as “=IF\(COUNTIF\(Self/),
    });
  });
  it('says that somebody holds the file', () => {
    const host = open();
    host.holdLock(true);
    expect(findingOf(tryOut(host).findings, 'waiting').verdict).toBe('different');
  });
  it('takes both ways of plain-text cells with an apostrophe', () => {
    const { findings } = tryOut(open({ plainTextKeepsApostrophe: true }));
    expect(findingOf(findings, 'texts').verdict).toBe('expected');
  });
  it('knows the clock of another place from that of the device', () => {
    const host = open();
    const desk = deskAt(host, 'teacher');
    const { trial } = answerOf(desk('beginSelfCheck', 'teacher'));
    if (trial === undefined) throw new Error('no sheet');
    const there = { now: Date.UTC(2026, 2, 2, 23, 30), timeZone: 'Pacific/Auckland' };
    expect(answerOf(desk('probeFile', trial, 'clock', there)).verdict).toBe('different');
  });
});

describe('the scratch sheet', () => {
  it('of a run that was stopped goes with the next, whatever it is called, and no other sheet goes with it', () => {
    const host = open();
    const desk = deskAt(host, 'teacher');
    const own = host.book.addSheet('Selfcheck', 0);
    answerOf(desk('beginSelfCheck', 'teacher'));
    const left = scratchOf(host);
    if (left === undefined) throw new Error('no sheet');
    host.book.renameSheet(left, 'Something else');
    const { trial } = answerOf(desk('beginSelfCheck', 'teacher'));
    expect(host.book.sheets).toHaveLength(3);
    expect(host.book.sheets).toContain(own);
    if (trial === undefined) throw new Error('no sheet');
    expect(answerOf(desk('endSelfCheck', trial, false)).verdict).toBe('expected');
    expect(host.book.sheets.map(({ name }) => name)).toEqual(['Selfcheck', 'Sheet1']);
  });
  it('is no class of the lesson, though the trigger counts in it', () => {
    const host = open({ saved: built, clock });
    const desk = deskAt(host, 'teacher');
    const { trial } = answerOf(desk('beginSelfCheck', 'teacher'));
    if (trial === undefined) throw new Error('no sheet');
    answerOf(desk('readyTenCells', trial));
    const { sheets } = answerOf(
      host.run('teacher', 'readBook', [layoutVersion, { kinds: [] }]) as Outcome<{
        readonly sheets: readonly { readonly id: number; readonly tag: unknown }[];
      }>,
    );
    expect(sheets.find(({ id }) => id === scratchOf(host)?.id)?.tag).toBeNull();
  });
  it('cannot be made where the host refuses, and then nothing else is tried', () => {
    const host = open({ troubles: { consentRefused: ['student'] } });
    const refuses = (host: StandIn): StandIn => {
      const { run } = host;
      return Object.assign(Object.create(host) as StandIn, {
        run: (...request: Parameters<StandIn['run']>) => {
          try {
            return run(...request);
          } catch (error) {
            // As the page does with whatever a call fails with.
            return { ok: false, problem: { message: (error as Error).message } };
          }
        },
      });
    };
    const { findings, report } = tryOut(refuses(host), { seat: 'student' });
    expect(findings[0]).toMatchObject({
      name: 'sheet',
      verdict: 'different',
      saw: expect.stringMatching(/Authorization is required/),
    });
    expect(report).toContain('Do not begin a lesson');
    expect(scratchOf(host)).toBeUndefined();
  });
});

describe('steps of the self-check in the script', () => {
  const host = open({ saved: built, clock });
  const take = (...steps: readonly unknown[]): readonly TrialFact[] =>
    answerOf(host.run('teacher', 'tryHost', [layoutVersion, { steps }]) as Outcome<readonly TrialFact[]>);
  it('stay in the scratch sheet', () => {
    take({ do: 'begin' });
    const out: readonly TrialChain[] = [
      { on: 'file', calls: [['getSheets']] },
      {
        on: 'file',
        calls: [
          ['getRange', 'Plan!A1'],
          ['setValue', 'x'],
        ],
      },
      { on: 'file', calls: [['rename', 'x']] },
      { on: 'sheet', calls: [['getParent']] },
      { on: 'sheet', calls: [['getRange', 'A1'], ['getSheet'], ['getParent']] },
      {
        on: 'sheet',
        calls: [
          ['getRange', "'Plan'!A1"],
          ['setValue', 'x'],
        ],
      },
      { on: 'app', calls: [['getActiveSpreadsheet']] },
      { on: 'app', calls: [['openById', 'x']] },
    ];
    const before = workbookText(host);
    for (const fact of take(...out)) expect(fact.refused).not.toBe('');
    expect(take(...out).map(({ refused }) => refused === undefined)).toEqual(out.map(() => false));
    expect(workbookText(host)).toBe(before);
    take({ do: 'end' });
  });
  it('go on after one that is refused, or that is none at all', () => {
    const facts = take({ do: 'begin' }, null, 7, { on: 'sheet', calls: [['noSuchCall']] }, { do: 'end' });
    expect(facts.map(({ refused }) => refused === undefined)).toEqual([true, false, false, false, true]);
    expect(scratchOf(host)).toBeUndefined();
  });
  it('hand over plain values: dates as moments, the host’s own objects as nothing, lists of them by their number', () => {
    const [, date, sheet, protections] = take(
      { do: 'begin' },
      { on: 'sheet', calls: [['getRange', 'A5'], ['setValue', '2026-03-02'], ['getValue']] },
      { on: 'sheet', calls: [['activate']] },
      { on: 'sheet', calls: [['getRangeList', ['A1', 'B1']], ['getRanges']] },
    );
    expect(date?.value).toMatchObject({ date: expect.any(Number) });
    expect([sheet?.value, protections?.value]).toEqual([null, 2]);
    take({ do: 'end' });
  });
  it('tell a cell what its arguments were', () => {
    const cell = open();
    const at = { sheet: 'Sheet1', row: 1, column: 1 };
    expect(typedInto(cell, { ...at, text: '=TRYHOST("kinds",B1,5%,"a",TRUE,B1:C2)' })).toBe(
      'String  | Number 0.05 | String a | Boolean true | 2 x 2 of String ',
    );
    expect(typedInto(cell, { ...at, text: '=TRYHOST("spill")' })).toBe('0');
  });
});

it('tries every native function that a planned formula may call', () => {
  const tried = nativeCases('Selfcheck')
    .map(({ formula }) => formula)
    .concat(nativeAt.day)
    .join(' ');
  expect(nativeFunctions.filter((name) => !new RegExp(`\\b${name}\\(`).test(tried))).toEqual([]);
});

it('counts in its heading what it found', () => {
  const findings = [
    { name: 'texts', verdict: 'expected', saw: '' },
    { name: 'tags', verdict: 'different', saw: '' },
    { name: 'clock', verdict: 'not tried', saw: '' },
  ] as const;
  const report = reportText({ findings, role: 'teacher', day: '2026-03-02' });
  expect(report).toContain('1 as expected, 1 different, 1 could not be tried.');
  expect(report).toContain('Read the parts below that say “different”');
});
