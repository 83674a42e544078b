import type { ActivityView, LessonView } from '../../desk/views.ts';
import type { SettingName } from '../../lab/lesson/setup.ts';
import { drafts } from '../page/drafts.ts';
import type { Field } from '../page/field.ts';
import { draftOf, keptDraft, type PlanDraft } from './planDraft.ts';

const draftName = 'labrow plan';

interface KeptDraft {
  /** The sheet's own state when typing began: a draft over another state would overwrite what changed since. */
  readonly begun: string;
  /** The teams that it had then, by key. */
  readonly knows?: readonly string[];
  readonly draft: PlanDraft;
}

/** The plan as it is being written: what stands in the fields, the fields themselves by name, and what the sheet has. */
export interface PlanEditor {
  readonly lesson: LessonView;
  readonly draft: PlanDraft;
  /** What the sheet held when typing began. */
  readonly began: string;
  /** The teams that it had then, by key; left out where nobody noted them. */
  readonly knows: readonly string[] | undefined;
  /** The draft is one that was kept, and says something else than the sheet. */
  readonly isKept: boolean;
  readonly fields: Map<string, Field>;
  /** What is wrong with a field that the plan itself does not show, such as a count that could not be taken. */
  readonly checks: Map<string, () => string>;
  activity(): ActivityView | undefined;
  put(part: Partial<PlanDraft>): void;
  putSetting(name: SettingName, value: string): void;
  putGiven(name: string, value: string): void;
  /** Called after every change, and once at the start. */
  follow(listener: () => void): void;
  /** Forgets what was typed and not built. */
  drop(): void;
}

/** Each lesson has a draft of its own, and so has the next one. */
const draftNameOf = ({ lesson, lessons }: LessonView): string =>
  lessons.length > 1 ? `${draftName} ${lesson}` : draftName;

export function planEditor(lesson: LessonView, draftName = draftNameOf(lesson)): PlanEditor {
  const inSheet = draftOf(lesson);
  const begun = JSON.stringify(inSheet);
  const kept = drafts.read(draftName) as KeptDraft | null;
  const keptOne = kept ? keptDraft(kept.draft, inSheet) : undefined;
  let draft: PlanDraft = keptOne ?? inSheet;
  const began = keptOne && kept ? kept.begun : begun;
  const knows = keptOne && kept ? kept.knows : lesson.keys;
  const listeners: (() => void)[] = [];
  const put = (part: Partial<PlanDraft>) => {
    draft = { ...draft, ...part };
    drafts.keep(draftName, { begun: began, ...(knows && { knows }), draft } satisfies KeptDraft);
    for (const listener of listeners) listener();
  };
  return {
    lesson,
    get draft() {
      return draft;
    },
    began,
    knows,
    isKept: keptOne !== undefined && JSON.stringify(keptOne) !== begun,
    fields: new Map(),
    checks: new Map(),
    activity: () => lesson.activities.find(({ id }) => id === draft.activity),
    put,
    putSetting: (name, value) => put({ settings: { ...draft.settings, [name]: value } }),
    putGiven: (name, value) => put({ givens: { ...draft.givens, [name]: value } }),
    follow(listener) {
      listeners.push(listener);
      listener();
    },
    drop: () => drafts.drop(draftName),
  };
}
