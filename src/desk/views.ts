import type { Pictogram } from '../chemistry/pictogramNamed.ts';
import type { Step } from '../lab/lesson/activity.ts';
import type { PeriodPlan } from '../lab/lesson/periodPlan.ts';
import type { Setup, TeamPlan } from '../lab/lesson/setup.ts';
import type { PollAnswer } from '../lab/poll/pollAnswer.ts';
import type { Label } from '../lab/preparation/labels.ts';
import type { ClassFacts } from '../lab/record/classFacts.ts';
import type { RecordEntry } from '../lab/record/recordEntry.ts';

import type { ExitCounts } from './classes/exitCounts.ts';

/** What the page shows and hands back: plain data, made from what was read of a file. */

export interface ActivityView {
  readonly id: string;
  readonly title: string;
  readonly aim: string;
  /** How many periods it is made for; the Plan may say otherwise. */
  readonly periods: number;
  readonly givens: readonly {
    readonly name: string;
    readonly unit: string;
    readonly about: string;
    readonly optional: boolean;
    /** The size of a flask, to be found on the shelf. */
    readonly flask?: boolean;
    /** A value to begin with when this activity is picked, as text. */
    readonly start?: string;
  }[];
  /** The substances that it can be done with; left out where any solute of the lesson will do. */
  readonly solutes?: readonly SoluteView[];
}
export interface SoluteView {
  readonly name: string;
  readonly formula: string;
  /** Why the planner does not propose it, or empty. */
  readonly caution: string;
}
export interface LessonView {
  /** True once a table has been built in this file. */
  readonly built: boolean;
  readonly setup: Setup;
  /** Keys of its teams. */
  readonly keys: readonly string[];
  readonly activities: readonly ActivityView[];
  readonly solutes: readonly SoluteView[];
  readonly classes: readonly string[];
  /** The class whose sheet is in front; left out where it is another sheet. */
  readonly inFront?: string;
  readonly decimalMark: 'point' | 'comma';
  /** Problems found in the Plan as it stands, such as a key used twice. */
  readonly problems: readonly string[];
  /** How far an unfinished build has come, so that it can be taken up again; left out when none is open. */
  readonly building?: BuildState;
  /** The lesson that is spoken of, of those in use; empty in a file without any. */
  readonly lesson: string;
  readonly lessons: readonly LessonLine[];
  /** How many lessons were put away and can be opened again. */
  readonly awayCount: number;
  /** Whether the checks of any lesson in use come from the open sidebar. */
  readonly worksOutChecks: boolean;
}
/** A lesson in a line. */
export interface LessonLine {
  readonly id: string;
  /** Year-month-day; empty where nobody noted it. */
  readonly begun: string;
  /** Title of the activity, and the substance by its formula. */
  readonly activity: string;
  readonly substance: string;
  readonly classes: readonly string[];
  readonly entries: number;
  readonly invented: boolean;
  /** Of one that was put away: classes whose people, absences, links and times were taken out then. */
  readonly cleared?: readonly string[];
}
export interface LessonsView {
  readonly today: string;
  /** In the order in which they were begun. */
  readonly inUse: readonly LessonLine[];
  /** Put away, the last one first. */
  readonly away: readonly LessonLine[];
  readonly classes: readonly {
    readonly name: string;
    readonly teams: readonly string[];
    readonly keys: readonly string[];
    /** The lesson that the class is at, and when that was begun. */
    readonly lesson: string;
    readonly begun: string;
    /** Cells that tell of people, links and times. */
    readonly people: number;
  }[];
}
export interface DraftView {
  readonly givenNames: readonly string[];
  readonly teams: readonly TeamPlan[];
  readonly remarks: readonly string[];
}
export interface BuildState {
  readonly done: number;
  readonly total: number;
  /** What is being built now, or was built last. */
  readonly label: string;
  readonly finished: boolean;
  /** At the end, in words: what became of cells typed into a sheet after it had been put aside, and what does not come back. */
  readonly late?: string;
}
/** Who is in a team today, and who does what. */
export interface TeamMembersView {
  /** The team's cell as it stands; handed back with a change, so that nobody's words are written over. */
  readonly who: string;
  /** Year-month-day that the roles are of, or empty. */
  readonly day: string;
  readonly members: readonly { readonly name: string; readonly absent: boolean; readonly roles: readonly string[] }[];
}
export interface MembersWish {
  /** As typed: names between commas or lines, with or without a role. */
  readonly names: string;
  /** Names of those who are absent today. */
  readonly absent: readonly string[];
  /** The cell as it was read. */
  readonly base: string;
}
export interface TeamView {
  readonly team: string;
  readonly key: string;
  /** Another go at the lesson, in no count. */
  readonly practice?: true;
  /** Marked absent today in the Plan. */
  readonly absent?: boolean;
  /** Its block says that its numbers changed since the table was built. */
  readonly numbersChanged?: true;
  readonly members?: TeamMembersView['members'];
  readonly done: number;
  readonly steps: readonly {
    readonly id: string;
    readonly title: string;
    readonly check: string;
    readonly entry: string;
    readonly lookAt: string;
    readonly tries: number;
    /** 0 to 3. */
    readonly helpWanted?: number;
    readonly who?: string;
    /** The entry is a formula and not something typed: for the teacher to know. */
    readonly isFormula?: boolean;
  }[];
}
export interface ClassView {
  readonly className: string;
  /** The class whose sheet is in front; left out where it is another sheet. */
  readonly inFront?: string;
  readonly clock: string;
  /** Set where the class was closed at the bell and has not gone on since. */
  readonly closed?: true;
  readonly stepCount: number;
  readonly teams: readonly TeamView[];
  /** Whom to talk to first, and why; `ready` for a team that has finished. */
  readonly talkFirst: readonly { readonly team: string; readonly reason: string; readonly ready?: true }[];
  /** One sentence for the class about its commonest slip, or empty. */
  readonly sayToClass: string;
  /** What somebody typed where checks have to show, each with its cell and its team, as a sentence. */
  readonly inTheWay?: readonly string[];
  /** Rows whose check the host has not worked out yet. */
  readonly notYetKnown: number;
  /** The exit questions in counts; left out where there are none. */
  readonly exit?: ExitCounts;
  /** Percent errors found so far, smallest first; left out in an activity that asks for none. */
  readonly percentErrors?: readonly number[];
}

export interface PollView {
  /** Name of the sheet, or empty where it has not been built. */
  readonly sheet: string;
  /** As days are noted in the sheet. */
  readonly today: string;
  readonly answers: readonly PollAnswer[];
}

/** What pictures and pages are drawn from: the teams' numbers as the Plan has them now. */
export interface NumbersView {
  readonly activity: string;
  readonly decimalMark: 'point' | 'comma';
  /** The numbers that the plan starts from, by name of the given. */
  readonly typical: Readonly<Record<string, string>>;
  readonly teams: readonly TeamPlan[];
}

export interface RecordClassView {
  /** The entry as the class's sheet tells it now; its words hold no names. */
  readonly proposal: RecordEntry;
  /** Today's row, where the Record has one. */
  readonly saved?: RecordEntry;
  /** For the copied text only. */
  readonly names: ClassFacts['names'];
  readonly hasEntriesToday: boolean;
}
export interface RecordView {
  /** Year-month-day in the file's own time zone. */
  readonly day: string;
  readonly classes: readonly RecordClassView[];
}
export interface RecordDueView {
  readonly due: readonly string[];
  /** Until the next class joins them; left out where none is at work. */
  readonly nextInMinutes?: number;
}
/** What students have in front, and what they need not see. */
export interface SheetsView {
  readonly teachers: readonly { readonly id: number; readonly name: string; readonly kind: string }[];
  /** Where the students of each class find their sheet. */
  readonly classes: readonly { readonly name: string; readonly address: string }[];
}
/** One class on the page for a cover teacher. */
export interface CoverClassView {
  readonly className: string;
  readonly teams: number;
  readonly rowsDone: number;
  readonly rows: number;
  /** Rows at which most teams are: the first of theirs that is not right yet, with how many teams are there. */
  readonly open: readonly { readonly title: string; readonly teams: number }[];
  readonly talkFirst: readonly { readonly team: string; readonly reason: string }[];
  /** Teams to talk to besides. */
  readonly talkMore: number;
}
/** What somebody needs who takes the lesson, on one sheet of paper: no name of a student, and no answer. */
export interface CoverView {
  readonly date: string;
  readonly clock: string;
  readonly decimalMark: 'point' | 'comma';
  readonly activity: string;
  readonly aim: string;
  readonly classes: readonly CoverClassView[];
  readonly cautions: readonly { readonly head: string; readonly advice: readonly string[] }[];
  /** Defers to the safety data sheet and local rules. */
  readonly safety: string;
  readonly ready: readonly { readonly what: string; readonly amount: number | null; readonly unit: string }[];
  readonly waste: readonly { readonly what: string; readonly note: string }[];
}
export interface ShareView {
  readonly fileName: string;
  /** Entries of today, and those whose time is not known; those in sheets that were kept are not among them. */
  readonly entriesToday: number;
  /** Sheets that are not ours, by name. */
  readonly otherSheets: readonly string[];
}
export interface EmptyWish {
  /** The file's name as typed, or empty. */
  readonly fileName: string;
  /** The teacher's own wording and links in Help stay. */
  readonly keepHints: boolean;
  /** Sheets that are not ours go as well. */
  readonly removeOthers: boolean;
  /** For a new term of one’s own: classes and teams keep their names. */
  readonly keepTeams?: boolean;
}
export interface TeamsView {
  readonly classes: readonly {
    readonly name: string;
    /** How far hints go in its lesson, and the activity's own question for a team that has finished. */
    readonly lessonHelp: { readonly level: string; readonly suggestion: string };
    /** Practice blocks of the class. */
    readonly practice: readonly string[];
    readonly teams: readonly {
      readonly team: string;
      readonly key: string;
      readonly absent: boolean;
      readonly help: OwnHelpView;
      /** Left out where the team has no block yet. */
      readonly members?: TeamMembersView;
    }[];
  }[];
  /** Year-month-day in the file's own time zone. */
  readonly day: string;
}
/** What one team has of its own, as the Plan has it; empty where it has nothing. */
export interface OwnHelpView {
  readonly level: string;
  readonly extension: string;
}

/** What the day takes, for the teacher's eyes. */
export interface PreparationView {
  readonly date: string;
  readonly decimalMark: 'point' | 'comma';
  readonly activity: string;
  readonly aim: string;
  readonly sections: readonly {
    readonly name: string;
    readonly title: string;
    readonly rows: readonly {
      readonly what: string;
      readonly amount: number | null;
      readonly withSpare: number | null;
      readonly unit: string;
      readonly note: string;
      /** For each class of the day, in their order; left out where it is not told class by class. */
      readonly byClass?: readonly { readonly className: string; readonly amount: number }[];
      /** In the first row of what cautions are for; left out where there are none. */
      readonly pictograms?: readonly Pictogram[];
    }[];
  }[];
  /** Whether the Prepare sheet is up to the Plan; `none` where there is no such sheet. */
  readonly sheet: 'none' | 'up to date' | 'out of date';
  readonly labels: readonly Label[];
  readonly periods: readonly PeriodPlan[];
}
export interface KeyView {
  readonly date: string;
  readonly activity: string;
  readonly teams: readonly {
    readonly className: string;
    readonly team: string;
    readonly key: string;
    readonly lines: readonly {
      readonly title: string;
      readonly unit: string;
      readonly answer: string;
      readonly note: string;
      readonly kind: Step['kind'];
    }[];
  }[];
  /** One order that works, in words, for each step that asks for one: letters may differ from team to team. */
  readonly orders: readonly { readonly title: string; readonly inWords: string }[];
}
/** Tables for paper; there is no answer in them. */
export interface PaperView {
  readonly date: string;
  readonly decimalMark: 'point' | 'comma';
  readonly activity: string;
  readonly aim: string;
  readonly teams: readonly {
    readonly className: string;
    readonly team: string;
    readonly key: string;
    readonly steps: readonly {
      readonly title: string;
      readonly shown: string;
      readonly unit: string;
      readonly kind: string;
      readonly checkFigures: readonly number[];
    }[];
  }[];
}
