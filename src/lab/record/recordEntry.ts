/** Fields that every Record has had since there is one, in the order of its first columns. */
export const firstRecordFields = [
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

/**
 * Fields of a day's entry for one class, in the order of the Record sheet. All are text: counts and plain words. Later
 * ones stand behind the others, so that sheets without them go on.
 */
export const recordFields = [...firstRecordFields, 'substance', 'concentrations'] as const;
export type RecordField = (typeof recordFields)[number];

/** What a class did on one day in one lesson. `day` is written year-month-day, such as 2026-03-02. */
export type RecordEntry = Readonly<Record<RecordField, string>>;

/** Fields that a teacher writes or rewords; the others tell which row it is and what was planned. */
export const wordFields = ['present', 'finished', 'wentWell', 'hard', 'poll', 'next', 'notes'] as const;
export type WordField = (typeof wordFields)[number];

type Lesson = Pick<RecordEntry, 'className' | 'activity' | 'substance'>;

/** Which row of a day an entry is: of a class and a lesson. */
export const rowName = ({ className, activity, substance }: Lesson): string =>
  [className, activity, substance].join(', ');

/** A row with what it does not say of its lesson yet, as rows of older sheets do not. */
export const withLesson = (
  row: RecordEntry,
  { activity, aim, substance, concentrations }: RecordEntry,
): RecordEntry => ({
  ...row,
  activity: row.activity || activity,
  aim: row.aim || aim,
  substance: row.substance || substance,
  concentrations: row.concentrations || concentrations,
});
