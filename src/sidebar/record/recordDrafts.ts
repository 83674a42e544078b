import type { RecordClassView, RecordView } from '../../desk/views.ts';
import { type RecordEntry, rowName, type WordField, withLesson } from '../../lab/record/recordEntry.ts';
import { drafts } from '../page/drafts.ts';

const draftName = 'labrow record';

/** What is being written about a class: the words as they stand here, and the row they were begun from. */
interface ClassDraft {
  readonly entry: RecordEntry;
  readonly base: RecordEntry | null;
}
interface KeptDrafts {
  readonly day: string;
  readonly classes: Readonly<Record<string, ClassDraft>>;
}

/** Words of the day that are not yet in the sheet, kept while the tab lives. */
export interface RecordDrafts {
  /** Takes up what was kept for the day that is shown. */
  take(view: RecordView): void;
  of(view: RecordClassView): ClassDraft;
  put(view: RecordClassView, name: WordField, words: string): void;
  /** All that is kept, as one text to compare. */
  mark(): string;
  drop(): void;
}

export function recordDrafts(): RecordDrafts {
  let kept: KeptDrafts = { day: '', classes: {} };
  const of = ({ proposal, saved }: RecordClassView): ClassDraft =>
    kept.classes[rowName(proposal)] ?? {
      entry: saved === undefined ? proposal : withLesson(saved, proposal),
      base: saved ?? null,
    };
  return {
    take({ day }) {
      const before = drafts.read(draftName) as KeptDrafts | null;
      kept = before?.day === day ? before : { day, classes: {} };
    },
    of,
    put(view, name, words) {
      const { entry, base } = of(view);
      const draft = { entry: { ...entry, [name]: words }, base };
      kept = { ...kept, classes: { ...kept.classes, [rowName(view.proposal)]: draft } };
      drafts.keep(draftName, kept);
    },
    mark: () => JSON.stringify(kept.classes),
    drop() {
      kept = { ...kept, classes: {} };
      drafts.drop(draftName);
    },
  };
}
