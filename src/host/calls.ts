import type { Setup, TeamPlan } from '../lab/setup.ts';
import type { PageName } from './pages.ts';

/** Calls from the sidebar. Every value is plain data: the bridge refuses dates. */
export type Outcome<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problem: Problem };

/** Something to mend, in words for people; `field` names the sidebar field it belongs to, such as `givens.stock molarity`. */
export interface Problem {
  readonly message: string;
  readonly field?: string;
}

export interface ActivityView {
  readonly id: string;
  readonly title: string;
  readonly aim: string;
  readonly givens: readonly {
    readonly name: string;
    readonly unit: string;
    readonly about: string;
    readonly optional: boolean;
    /** A value to begin with when this activity is picked, as text. */
    readonly start?: string;
  }[];
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
  readonly activities: readonly ActivityView[];
  readonly solutes: readonly SoluteView[];
  readonly classes: readonly string[];
  readonly decimalMark: 'point' | 'comma';
  /** Problems found in the Plan as it stands, such as a key used twice. */
  readonly problems: readonly string[];
  /** How far an unfinished build has come, so that it can be taken up again; left out when none is open. */
  readonly building?: BuildState;
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
}
export interface TeamView {
  readonly team: string;
  readonly key: string;
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
  readonly clock: string;
  readonly stepCount: number;
  readonly teams: readonly TeamView[];
  /** Whom to talk to first, and why; `ready` for a team that has finished. */
  readonly talkFirst: readonly { readonly team: string; readonly reason: string; readonly ready?: true }[];
  /** One sentence for the class about its commonest slip, or empty. */
  readonly sayToClass: string;
  /** Rows whose check the host has not worked out yet. */
  readonly notYetKnown: number;
}

/** Endpoint name → its type. The build writes one top-level declaration for each; nothing else is callable. */
export interface Calls {
  readLesson(): Outcome<LessonView>;
  draftTeams(setup: Setup): Outcome<DraftView>;
  /** Writes the plan and the list of what is still to build; `continueBuild` does one sheet a call until finished. */
  startBuild(setup: Setup): Outcome<BuildState>;
  continueBuild(): Outcome<BuildState>;
  /** An invented class, ready to try. */
  startSample(): Outcome<BuildState>;
  readClass(className: string): Outcome<ClassView>;
  /** Enters again only the formulas that failed or never finished. */
  checkAgain(): Outcome<{ readonly renewed: number }>;
  /** Goes to a team's block in the sheet. */
  goToTeam(className: string, key: string): Outcome<null>;
  /** Opens a page to print or project in place of the sidebar, or the sidebar again; `about` goes to the page, such as a class. */
  openPage(page: PageName | 'sidebar', about?: string): Outcome<null>;
}
export const callNames = [
  'readLesson',
  'draftTeams',
  'startBuild',
  'continueBuild',
  'startSample',
  'readClass',
  'checkAgain',
  'goToTeam',
  'openPage',
] as const satisfies readonly (keyof Calls)[];
