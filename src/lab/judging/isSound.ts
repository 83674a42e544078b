import type { JudgedRow } from './judgedRow.ts';

/** Whether other rows may go on from a row without a second thought. */
export const isSound = ({ status }: Pick<JudgedRow, 'status'>): boolean => status === 'on target' || status === 'close';
