/** Lines of a period that are no step of the activity. */
export const periodTexts = {
  opening: 'Aim of the day, roles, eye protection on',
  bench: 'At the bench',
  clearing: 'Clear up, wash hands, one sentence on today’s work',
} as const;
