import type { Setup, TeamPlan } from '../../lab/lesson/setup.ts';
import type { SheetRole } from '../../workbook/workbook.ts';
import type { Book } from '../file/book.ts';
import type { BuildState } from '../views.ts';

/** One sheet that is to be built, or put aside because its class is no longer in the Plan. */
export interface BuildTask {
  readonly role: SheetRole;
  readonly label: string;
  /** Of a class: its teams, by which it is found in the Plan whatever it is called. */
  readonly keys?: readonly string[];
  /** The sheet to put aside. */
  readonly aside?: number;
  /** A sheet to put away with its lesson, or to remove with the sample. */
  readonly leaves?: LeavingTask;
}

/** A sheet that goes out of use with its lesson. */
export interface LeavingTask {
  readonly sheet: number;
  /** The dated name that it gets; left out where it is removed. */
  readonly keptName?: string;
  /** The sheet that comes in its place, and the name of the tab that it takes over. */
  readonly instead?: SheetRole;
  readonly tab: string;
}

/** What a build was begun with, so that one that stopped in the Plan can begin again with the same. */
export interface BuildWish {
  readonly setup: Setup;
  readonly sample: boolean;
  /** The lesson that is built; left out in notes and files from before there were several. */
  readonly lesson?: string;
  /** Classes that go over to this lesson from the one that they are at: that is put away. */
  readonly from?: readonly string[];
  /** The lesson was put away, and is in use again as its Plan has it. */
  readonly opens?: boolean;
  /** Which of its classes come back then, by what their sheets are found by; all of them where it is left out. */
  readonly wakes?: readonly string[];
  /** Classes that come back without their people, which were taken out when they were put away. */
  readonly cleared?: readonly string[];
  /** Cells in which somebody typed over a check while the lesson was put away; what stood there is in notes now. */
  readonly overChecks?: readonly { readonly className: string; readonly cells: readonly string[] }[];
  /** People, absences, links and times are taken out of what is put away. */
  readonly takesPeople?: boolean;
  /** The sample goes, with all that it left. */
  readonly removesSample?: boolean;
  /** A class to which one more team comes, or which comes itself: the others' sheets are not touched. */
  readonly joins?: { readonly className: string };
  /** One more go at the lesson for somebody of a class, under the key and the name that it is to have. */
  readonly practice?: Pick<TeamPlan, 'key' | 'className' | 'team'>;
  /** Keys of the teams that stood in the Plan when this was begun to be typed: others were added since, and stay. */
  readonly knows?: readonly string[] | undefined;
  readonly answers: BuildAnswers;
}

/** What the teacher said to a question of the build. */
export interface BuildAnswers {
  /** Names that changed belong to the same class or team, or to another one. */
  readonly names?: 'same' | 'other';
  /** Cells that people typed may be set aside with the sheets that they stand in: any, or as many as were counted. */
  readonly setAside?: boolean | number;
  /** Another activity or substance begins the next lesson. */
  readonly begins?: 'next';
  /** A class may begin two lessons on one day. */
  readonly sameDay?: boolean;
  /** Whether the sample goes now that there is a lesson of one’s own. */
  readonly sample?: 'remove' | 'keep';
}

/** How far a build has come. It stands in the file, so that any page can go on with it. */
export interface BuildNote {
  readonly version: 2;
  readonly wish: BuildWish;
  readonly tasks: readonly BuildTask[];
  readonly done: number;
  /** Date for the names of sheets that are kept. */
  readonly stamp: string;
  /** By role: the name that a new sheet gets, so that one which was made and not yet tagged is found again. */
  readonly names: Readonly<Record<string, string>>;
  /** The empty sheet that the file began with, where this is its first build. */
  readonly emptySheet: number | null;
  /** The sheet in view when a later build began. */
  readonly shownBefore: number | null;
  /** A sheet was made, and with it what is in view has changed. */
  readonly made: boolean;
}

/** The build that is under way in a file. One that an earlier version noted is begun again from the Plan. */
export function noteIn({ note }: Pick<Book, 'note'>): BuildNote | undefined {
  if (note === '') return undefined;
  try {
    const read = JSON.parse(note) as Partial<BuildNote>;
    return read.version === 2 ? (read as BuildNote) : undefined;
  } catch {
    return undefined;
  }
}

/** Progress as the sidebar shows it: the label is what comes next, or what was built last. */
export function stateOf({ tasks, done }: Pick<BuildNote, 'tasks' | 'done'>): BuildState {
  const total = tasks.length;
  return { done, total, label: tasks[Math.min(done, total - 1)]?.label ?? '', finished: done >= total };
}

/** A role as one text, to name it in a stored list. */
export const roleName = ({ kind, className = '', lesson }: SheetRole): string =>
  JSON.stringify(lesson === undefined ? [kind, className] : [kind, className, lesson]);
