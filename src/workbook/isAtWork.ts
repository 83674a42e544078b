/** Whether what a cell shows says that the host is still working it out: such a cell comes by itself. */
export const isAtWork = (shown: string): boolean => /^Loading|(\.\.\.|…)$/.test(shown);
