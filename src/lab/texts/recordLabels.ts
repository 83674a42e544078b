/** Headings of the Record: by these a sheet is known, wherever its columns stand. */
export const recordLabels = {
  day: 'day',
  className: 'class',
  activity: 'activity',
  aim: 'aim',
  present: 'present',
  finished: 'finished',
  wentWell: 'what went well',
  hard: 'what was hard',
  poll: 'poll',
  next: 'next time',
  notes: 'in your own words',
  substance: 'substance',
  concentrations: 'concentrations',
} as const;

/** What a heading was called in sheets of earlier versions, which go on: their rows are still read and written. */
const labelsBefore: Partial<Record<keyof typeof recordLabels, string>> = { next: 'what is next' };

/** Whether a cell of the heading row is the heading of this field, by its name of today or an earlier one. */
export const isRecordLabel = (field: keyof typeof recordLabels, text: string): boolean =>
  text === recordLabels[field] || (text !== '' && text === labelsBefore[field]);
