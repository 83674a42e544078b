import type { RecordClassView, RecordView } from '../../desk/views.ts';
import { type RecordEntry, rowName, type WordField, withLesson, wordFields } from '../../lab/record/recordEntry.ts';
import { drafts } from '../page/drafts.ts';

const draftName = 'labrow record';

/** What is being written about a class: its row as it stands here, and the row it was begun from. */
interface ClassDraft {
  readonly entry: RecordEntry;
  readonly base: RecordEntry | null;
}
type Words = Readonly<Partial<Record<WordField, string>>>;
/** The fields that somebody typed in, and no others: what a class did goes on while its notes are written. */
interface KeptDraft {
  readonly words: Words;
  readonly base: RecordEntry | null;
}
interface KeptDrafts {
  readonly day: string;
  readonly classes: Readonly<Record<string, KeptDraft>>;
}

/** Drafts that an earlier sidebar has kept hold a whole row each; what was typed in it nobody can tell now, so all counts. */
const asWords = (classes: Readonly<Record<string, KeptDraft | ClassDraft>>): KeptDrafts['classes'] =>
  Object.fromEntries(
    Object.entries(classes).map(([name, draft]) => {
      if (!('entry' in draft)) return [name, draft];
      const words = Object.fromEntries(wordFields.map((field) => [field, draft.entry[field]]));
      return [name, { words, base: draft.base }];
    }),
  );

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
  const keptOf = ({ proposal, saved }: RecordClassView): KeptDraft =>
    kept.classes[rowName(proposal)] ?? { words: {}, base: saved ?? null };
  const of = (view: RecordClassView): ClassDraft => {
    const { proposal, saved } = view;
    const { words, base } = keptOf(view);
    return { entry: { ...(saved === undefined ? proposal : withLesson(saved, proposal)), ...words }, base };
  };
  return {
    take({ day }) {
      const before = drafts.read(draftName) as KeptDrafts | null;
      kept = { day, classes: before?.day === day ? asWords(before.classes) : {} };
    },
    of,
    put(view, name, words) {
      const before = keptOf(view);
      const draft = { words: { ...before.words, [name]: words }, base: before.base };
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
