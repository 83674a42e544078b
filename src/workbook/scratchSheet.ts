/**
 * The sheet in which the self-check tries things out. It is known by its first cell, however it is named, and is never
 * taken for a sheet of a lesson.
 */
export const scratchSheet = {
  name: 'Selfcheck',
  mark: 'Labrow tries this file out here. This sheet goes away by itself: keep nothing in it.',
} as const;

/** The hidden sheet that tells teacher and students apart. */
export const deskSheetName = 'Labrow teacher';
