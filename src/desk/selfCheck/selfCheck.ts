import { scratchSheet } from '../../workbook/scratchSheet.ts';
import type { Work } from '../file/ask.ts';
import type { File } from '../file/look.ts';
import { done, type Outcome } from '../outcome.ts';
import type { Device, Finding, Role, Trial } from './finding.ts';
import { argumentsOfCells } from './probes/argumentsOfCells.ts';
import { clocks } from './probes/clocks.ts';
import { copyOfFile, leaveMarks, markKey, readLeft } from './probes/copyOfFile.ts';
import { crowd } from './probes/crowd.ts';
import { deskOpen } from './probes/deskOpen.ts';
import { formulas } from './probes/formulas.ts';
import { functionsInCells } from './probes/functionsInCells.ts';
import { listsAndTints } from './probes/listsAndTints.ts';
import { nativeFunctions } from './probes/nativeFunctions.ts';
import { plainTexts } from './probes/plainTexts.ts';
import { sheetMarks } from './probes/sheetMarks.ts';
import { spill } from './probes/spill.ts';
import { countTries, prepareTenCells } from './probes/tries.ts';
import { waitingForOthers } from './probes/waitingForOthers.ts';
import { warnings } from './probes/warnings.ts';
import { inSheet, take } from './take.ts';
import { type ProbeName, selfCheckWords } from './words.ts';

/*
 * The self-check, as the page goes through it: begin, one probe after the other, ten cells that a person types into, end.
 * The script only does what each probe asks in a sheet of its own; what came of it is judged here.
 */

/** Probes that need nobody, in the order they are taken: later ones know what earlier ones found. */
const probes = {
  formulas: (trial: Trial) => formulas(trial, trial.sheet),
  native: (trial: Trial) => nativeFunctions(trial, trial.sheet),
  functions: functionsInCells,
  arguments: argumentsOfCells,
  spill,
  crowd,
  texts: plainTexts,
  protection: warnings,
  rules: listsAndTints,
  waiting: waitingForOthers,
  clock: (_: Trial, device: Device) => clocks(device),
  desk: deskOpen,
  tags: (trial: Trial) => sheetMarks(trial.sheet),
} as const satisfies Partial<Record<ProbeName, (trial: Trial, device: Device) => Work<Finding>>>;
export type HostProbe = keyof typeof probes;
export const hostProbes = Object.keys(probes) as readonly HostProbe[];

export interface Begun {
  readonly trial: Trial | undefined;
  readonly findings: readonly Finding[];
}

/** Makes the scratch sheet; one that an earlier run has left is read and goes. Without a sheet nothing else is tried. */
export function* beginSelfCheck(_: File, role: Role): Work<Outcome<Begun>> {
  const left = yield* readLeft();
  const [begun] = yield* take({ do: 'begin' });
  const [, sheet] = yield* take(inSheet(['setName', scratchSheet.name]), inSheet(['getName']), {
    on: 'store',
    calls: [['getDocumentProperties'], ['deleteProperty', markKey]],
  });
  if (typeof sheet?.value !== 'string') {
    const words = begun?.refused ?? sheet?.refused ?? '';
    return done({
      trial: undefined,
      findings: [{ name: 'sheet', verdict: 'different', saw: selfCheckWords.refused(words) }],
    });
  }
  const trial: Trial = {
    role,
    sheet: sheet.value,
    separator: ',',
    functionsAnswer: false,
    shown: typeof begun?.value === 'number' ? begun.value : undefined,
    left,
  };
  return done({
    trial,
    findings: [{ name: 'sheet', verdict: 'expected', saw: selfCheckWords.saw.sheetMade }, copyOfFile(trial)],
  });
}

export function* probeFile(_: File, trial: Trial, name: HostProbe, device: Device): Work<Outcome<Finding>> {
  return done(yield* (probes[name] as (trial: Trial, device: Device) => Work<Finding>)(trial, device));
}

/** Ten cells for the person to type into, and what was counted of it. */
export function* readyTenCells(_: File, trial: Trial): Work<Outcome<null>> {
  yield* prepareTenCells(trial);
  return done(null);
}
export function* countTenCells(_: File): Work<Outcome<Finding>> {
  return done(yield* countTries());
}

/** Takes the scratch sheet away, or leaves it with marks on it for a run in a copy of the file. */
export function* endSelfCheck(_: File, trial: Trial, leaves: boolean): Work<Outcome<Finding>> {
  const { saw } = selfCheckWords;
  if (leaves) {
    // A fresh sheet: nothing that was tried goes into the copy.
    yield* take({ do: 'begin' });
    const isLeft = yield* leaveMarks();
    if (isLeft) return done({ name: 'gone', verdict: 'not tried', saw: saw.leftForCopy });
  }
  const [ended] = yield* take({ do: 'end', ...(trial.shown === undefined ? {} : { sheetId: trial.shown }) });
  return done(
    ended?.value === 0
      ? { name: 'gone', verdict: 'expected', saw: saw.goneRight }
      : { name: 'gone', verdict: 'different', saw: saw.goneWrong(Number(ended?.value ?? 1)) },
  );
}
