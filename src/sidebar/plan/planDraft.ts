import type { ActivityView, LessonView } from '../../desk/views.ts';
import { deskWords } from '../../desk/words.ts';
import { decimalMarkOf } from '../../lab/lesson/lessonSettings.ts';
import type { SettingName, Setup } from '../../lab/lesson/setup.ts';
import { withDecimalMark } from '../../measurement/withDecimalMark.ts';
import { ionChoice } from './ionChoice.ts';
import { namesForCount, teamsToStart } from './teamNames.ts';

export interface ClassDraft {
  readonly name: string;
  /** One name on each line, as typed. */
  readonly teams: string;
}

/** The plan as it stands in the fields: everything is text as typed, finished or not. */
export interface PlanDraft {
  readonly activity: string;
  /** True where the formula is typed rather than picked from the list. */
  readonly otherFormula: boolean;
  readonly givens: Readonly<Record<string, string>>;
  readonly ownNumbers: boolean;
  readonly settings: Readonly<Record<SettingName, string>>;
  readonly flasks: string;
  readonly pipettes: string;
  readonly balanceReads: string;
  readonly balanceMax: string;
  readonly classes: readonly ClassDraft[];
}

const withMark = (number: number, setup: Setup) => withDecimalMark(String(number), decimalMarkOf(setup.settings));
const sizesText = (sizes: readonly number[], setup: Setup) =>
  sizes.map((size) => withMark(size, setup)).join(decimalMarkOf(setup.settings) === 'comma' ? '; ' : ', ');

/** The fields as the sheet has them, or as a new file begins. */
export function draftOf({ setup, solutes, activities }: LessonView): PlanDraft {
  const formula = setup.givens.formula ?? '';
  const activity = activities.find(({ id }) => id === setup.activity) ?? activities[0];
  return {
    activity: activity?.id ?? setup.activity,
    otherFormula: formula !== '' && !(activity?.solutes ?? solutes).some((solute) => solute.formula === formula),
    givens: activity ? givensFor(activity, setup.givens) : setup.givens,
    ownNumbers: setup.ownNumbers,
    settings: setup.settings,
    flasks: sizesText(setup.shelf.flasksMl, setup),
    pipettes: sizesText(setup.shelf.pipettesMl, setup),
    balanceReads: withMark(setup.shelf.balanceReadabilityG, setup),
    balanceMax: withMark(setup.shelf.balanceMaxG, setup),
    classes:
      setup.classes.length > 0
        ? setup.classes.map(({ name, teams }) => ({ name, teams: teams.join('\n') }))
        : [{ name: deskWords.classNumber(1), teams: namesForCount(teamsToStart).join('\n') }],
  };
}

/** What was typed stays under its name, also for givens that this activity does not ask for; new ones get their start. */
export function givensFor(
  activity: ActivityView,
  typed: Readonly<Record<string, string>>,
): Readonly<Record<string, string>> {
  const givens: Record<string, string> = { ...typed };
  for (const { name, start } of activity.givens) {
    if ((givens[name] ?? '') === '' && name !== 'ion') givens[name] = start ?? '';
  }
  const asked = activity.givens.find(({ name }) => name === 'ion');
  if (asked && (givens.ion ?? '') === '') givens.ion = fittingIon(givens.formula ?? '', asked.start ?? '');
  return givens;
}

/** The ion if the substance gives it, else the one that it gives most of; empty where it gives none. */
function fittingIon(formula: string, ion: string): string {
  const { chosen, likely, options } = ionChoice({ formula, ion });
  return options.length === 0 ? '' : chosen === '' ? likely : ion;
}

/** The givens for another activity: a substance that it does not take makes room for one that it does. */
export function givensAfter(
  activity: ActivityView,
  {
    givens,
    otherFormula,
    solutes,
  }: { readonly givens: PlanDraft['givens']; readonly otherFormula: boolean; readonly solutes: LessonView['solutes'] },
): PlanDraft['givens'] {
  const asked = activity.givens.find(({ name }) => name === 'formula');
  const offered = activity.solutes ?? solutes;
  const isOffered = (formula: string) => offered.some((solute) => solute.formula === formula);
  const start = asked?.start ?? '';
  const formula = givens.formula ?? '';
  const stays = !asked || otherFormula || isOffered(formula);
  const after = givensFor(activity, stays ? givens : { ...givens, formula: isOffered(start) ? start : '' });
  const asksIon = activity.givens.some(({ name }) => name === 'ion');
  return asksIon ? { ...after, ion: fittingIon(after.formula ?? '', after.ion ?? '') } : after;
}

/** A draft that was kept in the tab, if it still has the shape of one. */
export function keptDraft(kept: unknown, begun: PlanDraft): PlanDraft | undefined {
  if (typeof kept !== 'object' || kept === null) return undefined;
  const sameShape = (Object.keys(begun) as (keyof PlanDraft)[]).every(
    (name) => typeof (kept as PlanDraft)[name] === typeof begun[name],
  );
  if (!sameShape) return undefined;
  const draft = kept as PlanDraft;
  const classesFit =
    Array.isArray(draft.classes) &&
    draft.classes.every(({ name, teams }) => typeof name === 'string' && typeof teams === 'string');
  if (!classesFit) return undefined;
  return { ...draft, settings: { ...begun.settings, ...draft.settings } };
}
