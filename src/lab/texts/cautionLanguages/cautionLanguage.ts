import type { HazardCode } from '../../../chemistry/cautionTexts.ts';

/**
 * All texts of the cautions in one more language, beside the first. Every code that the list of hazards can have is a key,
 * so that a text which is missing does not compile.
 */
export interface CautionLanguage {
  /** What its own readers call the language. */
  readonly itself: string;
  /** Its tag by BCP 47, so that a screen reader reads it as it is spoken. */
  readonly tag: string;
  readonly signalWords: { readonly Danger: string; readonly Warning: string };
  /** The prescribed statements, as the official text of the language has them. */
  readonly statements: Readonly<Record<HazardCode, string>>;
  readonly solid: string;
  /** Beside a form that is not for students, and who makes what is concentrated. */
  readonly staffOnlyForm: string;
  readonly staffOnly: string;
  readonly withTeacher: string;
  /** Where nobody here knows the substance or its strength. */
  readonly notKnown: string;
  /** Where what is known puts it below the limits for labels. */
  readonly notClassified: string;
  readonly wear: { readonly eyes: string; readonly hands: string; readonly all: string };
  readonly acidToWater: string;
  readonly heatOfSolution: string;
  readonly neverWithAcid: string;
  readonly noFlames: string;
  readonly awayFromFuel: string;
  readonly hood: string;
  readonly drain: string;
  readonly beaker: string;
  /** What a splash asks for, whatever the substance. */
  readonly splash: string;
  /** Where a row has no room for every statement. */
  readonly more: string;
  /** Defers to the teacher, the safety data sheet and local rules. */
  readonly deferring: string;
}
