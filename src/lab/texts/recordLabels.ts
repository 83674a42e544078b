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
