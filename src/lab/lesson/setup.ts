/** Settings of a lesson, as the Plan sheet lists them: name and value, both text. */
export const settingNames = [
  'activity',
  'periods',
  'figures',
  'atomic-weight decimals',
  'chlorine on the table',
  'decimal mark',
  'judge figures',
  'highest help level',
  'exit questions',
  'show exit checks',
  'glassware class',
  'glassware standard',
  'balance',
  'allowance for technique',
  'spare',
  'spare glassware',
  'work the dilution from',
  'concentrated reagents',
  'seed',
  'safety questions',
  'cautions also in',
  'evidence',
  'checks come from',
] as const;
/**
 * Settings that Plans built before they were thought of have no line for, each with what such a lesson has: so that nothing
 * moves under a class before the teacher asks for it.
 */
export const settingsBefore: Readonly<Record<string, string>> = {
  'safety questions': 'never',
  'cautions also in': 'none',
  evidence: 'no',
  'checks come from': 'formulas',
};
export type SettingName = (typeof settingNames)[number];
export type Settings = Readonly<Record<SettingName, string>>;

/** What stands on the shelf: sizes in mL, the balance in g. */
export interface Shelf {
  readonly flasksMl: readonly number[];
  readonly pipettesMl: readonly number[];
  readonly balanceReadabilityG: number;
  readonly balanceMaxG: number;
}

/** One class of the day and the names of its teams. */
export interface ClassSetup {
  readonly name: string;
  readonly teams: readonly string[];
}

/** All a teacher says before the table is built. Numbers stay as typed, so that 0.400 stays 0.400. */
export interface Setup {
  readonly activity: string;
  /** Values of the activity's givens by name, as typed; the starting point for every team. */
  readonly givens: Readonly<Record<string, string>>;
  /** True: each team gets its own numbers near these. False: all teams share these. */
  readonly ownNumbers: boolean;
  readonly settings: Settings;
  readonly shelf: Shelf;
  readonly classes: readonly ClassSetup[];
}

/** One team's line of the Plan. */
export interface TeamPlan {
  /** Never shown to change: finds the team's numbers wherever the line stands. */
  readonly key: string;
  readonly className: string;
  readonly team: string;
  /** By name of the given, as text. */
  readonly givens: Readonly<Record<string, string>>;
}

/** Numbers for every team, with what had to be given up in plain words. */
export interface TeamNumbers {
  readonly teams: readonly TeamPlan[];
  readonly remarks: readonly string[];
}
