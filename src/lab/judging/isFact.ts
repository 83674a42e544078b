import type { JudgedRow } from './judgedRow.ts';

/** What was measured stays what it is, however far from the plan: other rows go on from it. */
export const isFact = ({ step, value }: JudgedRow): boolean => step?.kind === 'measured' && value !== undefined;
