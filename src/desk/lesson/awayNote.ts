import type { BookSheet } from '../file/book.ts';

/** What is noted in the tag of a class sheet that is put away, so that earlier lessons are told without reading them. */
export interface AwayNote {
  readonly className: string;
  /** Keys of its teams. */
  readonly keys: readonly string[];
  /** Title of the activity, and the substance by its formula. */
  readonly activity: string;
  readonly substance: string;
  /** Cells with an entry. */
  readonly entries: number;
  /** Day on which it was put away. */
  readonly day: string;
  /** People, absences, links and times were taken out of it. */
  readonly cleared?: boolean;
  /** Of the sample. */
  readonly invented: boolean;
}

export function readAwayNote({ about = '', className = '' }: NonNullable<BookSheet['tag']>): AwayNote {
  const none: AwayNote = { className, keys: [], activity: '', substance: '', entries: 0, day: '', invented: false };
  try {
    return { ...none, ...(JSON.parse(about) as Partial<AwayNote>) };
  } catch {
    return none;
  }
}
