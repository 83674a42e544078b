import { remarks } from '../texts/feedback.ts';

const toOtherRows = ['needsRow', 'lookFirst', 'waitForRow', 'waitForTick'] as const;

/** Whether feedback only sends the team to another row: then that one needs the look, and not this. */
export const sendsElsewhere = (lookAt: string): boolean =>
  toOtherRows.some((name) => {
    const [before = '', after = ''] = remarks[name].split('{row}');
    return lookAt.startsWith(before) && lookAt.endsWith(after);
  });
