import { type DeskAnswer, type DeskArguments, type DeskCall, workFor } from '../../src/desk/acts.ts';
import { runWork } from '../../src/desk/runWork.ts';
import type { Finding, Role } from '../../src/desk/selfCheck/finding.ts';
import { answered, reportText } from '../../src/desk/selfCheck/reportText.ts';
import { hostProbes } from '../../src/desk/selfCheck/selfCheck.ts';
import type { StandIn } from '../../src/preview/standin/openStandIn.ts';
import { classColumns, layoutVersion } from '../../src/workbook/layout.ts';
import { scratchSheet } from '../../src/workbook/scratchSheet.ts';
import { answerOf } from '../host/bench.ts';

/** A device in the zone of the stand-in's file. */
const device = {
  now: Date.UTC(2026, 2, 2, 10, 0),
  timeZone: Intl.DateTimeFormat().resolvedOptions().timeZone,
};

/** Desk work from a seat; `between` happens before each call of the script, as time passes on the host. */
export const deskAt =
  (host: StandIn, seat: Role, between: () => void = () => {}) =>
  <Name extends DeskCall>(name: Name, ...about: DeskArguments<Name>): DeskAnswer<Name> =>
    runWork(workFor({ book: undefined }, name, about), ({ call, wish }) => {
      between();
      return host.run(seat, call, wish === undefined ? [layoutVersion] : [layoutVersion, wish]);
    });

export const scratchOf = (host: StandIn) =>
  host.book.sheets.find((sheet) => host.book.value(sheet, 1, 1) === scratchSheet.mark);

interface TryOut {
  readonly seat?: Role;
  readonly typed?: number;
  readonly leaves?: boolean;
  readonly between?: () => void;
}

/** The whole self-check as a person goes through it, with entries typed into the ten cells. */
export function tryOut(
  host: StandIn,
  { seat = 'teacher', typed = 10, leaves = false, between = () => {} }: TryOut = {},
): { readonly findings: readonly Finding[]; readonly report: string } {
  const desk = deskAt(host, seat, between);
  const { trial, findings: first } = answerOf(desk('beginSelfCheck', seat));
  const findings = [...first];
  if (trial !== undefined) {
    for (const name of hostProbes) findings.push(answerOf(desk('probeFile', trial, name, device)));
    answerOf(desk('readyTenCells', trial));
    const sheet = scratchOf(host)?.id ?? -1;
    for (let index = 0; index < typed; index += 1) {
      host.type(seat, [{ sheet, row: 60 + index, column: classColumns.entry, text: `1.${index}` }]);
    }
    findings.push(answerOf(desk('countTenCells')), answerOf(desk('endSelfCheck', trial, leaves)));
  }
  findings.push(...answered({}));
  return { findings, report: reportText({ findings, role: seat, day: '2026-03-02' }) };
}

export const findingOf = (findings: readonly Finding[], name: Finding['name']): Finding => {
  const found = findings.find((finding) => finding.name === name);
  if (found === undefined) throw new Error(`Expected a finding for ${name}.`);
  return found;
};
