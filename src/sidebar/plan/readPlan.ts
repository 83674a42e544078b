import { readFormula } from '../../chemistry/readFormula.ts';
import type { ActivityView } from '../../desk/views.ts';
import { errorText } from '../../errors/errorText.ts';
import { decimalMarkOf } from '../../lab/lesson/lessonSettings.ts';
import type { ClassSetup, Setup } from '../../lab/lesson/setup.ts';
import { readField } from '../arithmetic/readField.ts';
import { readSizes } from '../arithmetic/readSizes.ts';
import { texts } from '../texts.ts';
import { ionChoice } from './ionChoice.ts';
import type { PlanDraft } from './planDraft.ts';
import { mostTeams, teamNames } from './teamNames.ts';

/** `field` is the name a field is registered under, such as `givens.flask` or `classes.0.teams`. */
export interface FieldProblem {
  readonly field: string;
  readonly message: string;
}

/** Number part of a setting such as `2 %` or `0.01 g`. */
export const numberPart = (setting: string): string => setting.replace(/\s*(%|g)\s*$/, '');

/** The plan to send, or every field that needs another look, in the order of the page. */
export function readPlan(
  draft: PlanDraft,
  activity: ActivityView | undefined,
): { readonly setup: Setup } | { readonly problems: readonly FieldProblem[] } {
  const mark = decimalMarkOf(draft.settings);
  const problems: FieldProblem[] = [];
  const note = (field: string, message: string) => {
    problems.push({ field, message });
  };
  const number = (field: string, typed: string, unit: string, label: string, optional = false) => {
    const reading = readField({ typed, unit, mark });
    if (reading.kind === 'value') return reading;
    if (reading.kind === 'problem') note(field, reading.message);
    else if (!optional) note(field, texts.field.missing(label));
    return undefined;
  };
  const sizes = (field: string, typed: string): readonly number[] => {
    const outcome = readSizes(typed, mark);
    if ('message' in outcome) note(field, outcome.message);
    else if (outcome.sizes.length === 0) note(field, texts.plan.sizesMissing);
    return 'sizes' in outcome ? outcome.sizes : [];
  };

  const givens: Record<string, string> = {};
  if (!activity) note('activity', texts.field.notChosen(texts.plan.activity.toLowerCase()));
  for (const { name, unit, optional } of activity?.givens ?? []) {
    const typed = draft.givens[name] ?? '';
    const field = `givens.${name}`;
    if (unit !== '') givens[name] = number(field, typed, unit, name, optional)?.text ?? '';
    else if (name === 'ion' && ionChoice({ formula: draft.givens.formula ?? '', ion: '' }).none) givens[name] = '';
    else if (typed.trim() === '' && !optional) {
      note(
        field,
        name === 'formula' ? texts.field.notChosen(texts.plan.solute.toLowerCase()) : texts.field.missing(name),
      );
    } else {
      const formula = name === 'formula' ? readFormula(typed) : undefined;
      if (formula && !formula.ok) note(field, errorText(formula.error));
      givens[name] = typed.trim();
    }
  }

  if (givens.ion !== undefined && givens.ion !== '') {
    const { problem } = ionChoice({ formula: givens.formula ?? '', ion: givens.ion });
    if (problem !== '') note('givens.ion', problem);
  }
  const classes = readClasses(draft, note);
  const flasksMl = sizes('shelf.flasksMl', draft.flasks);
  const pipettesMl = sizes('shelf.pipettesMl', draft.pipettes);
  const reads = number('shelf.balanceReadabilityG', draft.balanceReads, 'g', texts.plan.balanceReads.toLowerCase());
  const max = number('shelf.balanceMaxG', draft.balanceMax, 'g', texts.plan.balanceMax.toLowerCase());

  const typedAllowance = numberPart(draft.settings['allowance for technique']);
  // An allowance of nothing is a fair choice, unlike a volume of nothing.
  const noAllowance = /^0+([.,]0+)?$/.test(typedAllowance.trim());
  const allowance = noAllowance
    ? { text: '0' }
    : number('settings.allowance for technique', typedAllowance, '%', texts.plan.allowance.toLowerCase());
  const seed = draft.settings.seed.trim();
  if (!/^\d{1,9}$/.test(seed)) note('settings.seed', texts.plan.seedWhole(seed));

  if (problems.length > 0 || !activity || !reads || !max || !allowance) return { problems };
  return {
    setup: {
      activity: activity.id,
      givens,
      ownNumbers: draft.ownNumbers,
      settings: {
        ...draft.settings,
        activity: activity.id,
        seed,
        balance: `${reads.text} g`,
        'allowance for technique': `${allowance.text} %`,
      },
      shelf: { flasksMl, pipettesMl, balanceReadabilityG: reads.value, balanceMaxG: max.value },
      classes,
    },
  };
}

function readClasses(draft: PlanDraft, note: (field: string, message: string) => void): readonly ClassSetup[] {
  if (draft.classes.length === 0) note('classes', texts.plan.noClasses);
  const seen = new Set<string>();
  return draft.classes.map(({ name: typedName, teams: typedTeams }, index) => {
    const name = typedName.trim();
    const field = `classes.${index}`;
    if (name === '') note(`${field}.name`, texts.plan.classNameMissing);
    else if (seen.has(name.toLowerCase())) note(`${field}.name`, texts.plan.classNameTwice(name));
    seen.add(name.toLowerCase());
    const teams = teamNames(typedTeams);
    const twice = teams.find((team, at) => teams.some((other, before) => before < at && sameName(other, team)));
    if (teams.length === 0) note(`${field}.teams`, texts.plan.teamsMissing);
    else if (teams.length > mostTeams) note(`${field}.teams`, texts.plan.teamsTooMany(mostTeams, teams.length));
    else if (twice !== undefined) note(`${field}.teams`, texts.plan.teamTwice(twice));
    return { name, teams };
  });
}

const sameName = (one: string, other: string) => one.toLowerCase() === other.toLowerCase();
