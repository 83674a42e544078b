import type { BlockReading, StepReading } from '../../workbook/readClassSheet.ts';

/** Cells of a row that people have typed in: entry, help wanted and who. */
export const typedInStep = ({ entry, helpWanted, who }: StepReading): number =>
  [entry !== '', helpWanted > 0, who !== ''].filter(Boolean).length;

/** The same for a whole team, with the cell that says who is in it. */
export const typedInBlock = ({ who, steps }: BlockReading): number =>
  steps.reduce((sum, step) => sum + typedInStep(step), who === '' ? 0 : 1);
