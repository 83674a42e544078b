/** Fields of a day's entry for one class, in the order of the Record sheet. All are text: counts and plain words. */
export const recordFields = [
  'day',
  'className',
  'activity',
  'aim',
  'present',
  'finished',
  'wentWell',
  'hard',
  'poll',
  'next',
  'notes',
] as const;
export type RecordField = (typeof recordFields)[number];

/** What a class did on one day. `day` is written year-month-day, such as 2026-03-02. */
export type RecordEntry = Readonly<Record<RecordField, string>>;

/** Fields that a teacher writes or rewords; the others tell which row it is and what was planned. */
export const wordFields = ['present', 'finished', 'wentWell', 'hard', 'poll', 'next', 'notes'] as const;
export type WordField = (typeof wordFields)[number];
