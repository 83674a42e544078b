/** Lines of a period that are no step of the activity. */
export const periodTexts = {
  opening: 'Aim of the day, who does what, eye protection on',
  bench: 'At the bench',
  clearing: 'Clear up, wash hands, one sentence about the day',
} as const;
