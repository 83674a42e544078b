import type { Work } from '../../file/ask.ts';
import type { Device, Finding } from '../finding.ts';
import { shownCell } from '../shownCell.ts';
import { inApp, inFile, take } from '../take.ts';
import { selfCheckWords } from '../words.ts';

const { saw } = selfCheckWords;

/** The file's day must be the day of whoever teaches, and its clock must move on by itself. What was set is set again. */
export function* clocks({ now, timeZone: here }: Device): Work<Finding> {
  const name = 'clock';
  const interval = (which: string) => inApp(['RecalculationInterval'], [which]);
  const [zone, scriptZone, before] = yield* take(
    inFile(['getSpreadsheetTimeZone']),
    { on: 'session', calls: [['getScriptTimeZone']] },
    inFile(['getRecalculationInterval'], ['toString']),
  );
  const fileZone = zone?.value;
  if (typeof fileZone !== 'string')
    return { name, verdict: 'not tried', saw: selfCheckWords.refused(zone?.refused ?? '') };
  const [, minute] = yield* take(
    inFile(['setRecalculationInterval', interval('MINUTE')]),
    inFile(['getRecalculationInterval'], ['toString']),
    inFile(['setRecalculationInterval', interval(String(before?.value ?? 'ON_CHANGE'))]),
  );
  const there = clockIn(now, fileZone);
  const isSame = there !== undefined && there === clockIn(now, here);
  const movesOn = minute?.value === 'MINUTE';
  return {
    name,
    verdict: isSame && movesOn ? 'expected' : 'different',
    saw: [
      isSame ? saw.clockRight(fileZone, there) : saw.clockWrong(fileZone, there ?? '?', clockIn(now, here) ?? '?'),
      ...(scriptZone?.value === fileZone ? [] : [saw.zonesDiffer(String(scriptZone?.value))]),
      movesOn ? saw.minute : saw.noMinute(shownCell(minute?.value ?? minute?.refused)),
    ].join(' '),
  };
}

/** Undefined for a zone that this browser does not know. */
function clockIn(now: number, timeZone: string): string | undefined {
  try {
    const parts = { weekday: 'long', hour: '2-digit', minute: '2-digit', hourCycle: 'h23', timeZone } as const;
    return new Intl.DateTimeFormat('en-GB', parts).format(new Date(now));
  } catch {
    return undefined;
  }
}
