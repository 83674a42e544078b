/** Widths of the columns of a class sheet that people read, in pixels, from the first on; marks behind them are narrow. */
export const classWidths = [120, 300, 110, 50, 80, 258, 220, 50, 90, 50, 50] as const;
