import type { Result } from '../../errors/result.ts';
import { letterOfOption } from '../bench/letteredOptions.ts';
import { lettersInOrder } from '../bench/orderedActions.ts';
import { questionByName } from '../bench/questions.ts';
import type { FilledQuantity } from '../judging/filledQuantity.ts';
import { fillQuantity } from '../judging/fillQuantity.ts';
import { slipSpans } from '../judging/slipsFound.ts';
import { leadingPlace, tenTo } from '../judging/span.ts';
import { spanOver } from '../judging/worked.ts';
import type { Member } from '../members/teamMembers.ts';
import { plainText } from '../numbers/nearbyNumbers.ts';
import { numbersForTeams } from '../numbers/numbersForTeams.ts';
import { quantities } from '../quantities.ts';
import type { SlipId } from '../texts/feedback.ts';
import { sampleTexts } from '../texts/sample.ts';
import { tickTexts } from '../texts/ticks.ts';
import { stockAndDilution } from './activities/stockAndDilution.ts';
import { activityById } from './activities.ts';
import type { Activity, CalculatedStep, MeasuredStep, OrderedStep, Step } from './activity.ts';
import { defaultSettings, defaultShelf } from './defaultSettings.ts';
import type { Setup, TeamPlan } from './setup.ts';
import { startingGivens } from './startingGivens.ts';

interface SampleEntry {
  readonly className: string;
  readonly team: string;
  readonly step: string;
  /** As it stands in the cell. */
  readonly entry: string;
  /** How often the row was tried, and how many minutes ago last. */
  readonly tries: number;
  readonly minutesAgo: number;
}

/** An invented school: its plan, and what its teams have typed so far. */
export interface SampleLesson {
  readonly school: string;
  readonly setup: Setup;
  readonly entries: readonly SampleEntry[];
  /** Invented people of some teams. */
  readonly members: readonly {
    readonly className: string;
    readonly team: string;
    readonly people: readonly Pick<Member, 'name' | 'absent'>[];
  }[];
}

/** How a team of the sample goes about a step; a step that is not named is done right. */
type Manner =
  | { readonly slip: SlipId }
  | { readonly as: 'with unit' | 'words' | 'rounded on the way' | 'wrong order' | 'wrong choice' };

interface Progress {
  /** How many steps have an entry; the rest is blank. */
  readonly steps: number;
  readonly manners?: Readonly<Record<string, Manner>>;
  /** Tries of steps that took more than one. */
  readonly tries?: Readonly<Record<string, number>>;
  /** Since the last entry; what came before took a few minutes each. */
  readonly minutesAgo?: number;
}

/** Between two entries of a team of the sample. */
const minutesEach = 2;

/** What the teams have done, class by class, in the order of their names. */
const progress: readonly (readonly Progress[])[] = [
  [
    { steps: 15 },
    {
      steps: 4,
      manners: { 'mass of solute': { slip: 'volume-in-mL' } },
      tries: { 'moles of solute': 2, 'mass of solute': 4 },
    },
    {
      steps: 7,
      manners: { 'mass of solute': { as: 'with unit' }, 'stock made': { as: 'rounded on the way' } },
      minutesAgo: 11,
    },
    { steps: 10, manners: { 'stock volume': { slip: 'water-for-stock' } } },
    { steps: 5, manners: { 'stock procedure': { as: 'wrong order' } }, tries: { 'stock procedure': 2 } },
    { steps: 0 },
  ],
  [
    { steps: 4, manners: { 'mass of solute': { slip: 'moles-reported' } } },
    { steps: 9, manners: { 'dilution factor': { slip: 'ratio-inverted' } }, tries: { 'dilution factor': 3 } },
    { steps: 3, manners: { 'moles of solute': { slip: 'volume-in-mL' } } },
    { steps: 14, manners: { particles: { as: 'wrong choice' } } },
    { steps: 3, manners: { 'moles of solute': { as: 'words' } }, minutesAgo: 14 },
    { steps: 2 },
  ],
];

/** Above the plan by less than the allowance for technique: a team that weighed with care. */
const weighedShare = 1.004;

/** An impossible sample is a mistake in the program, not in anybody’s input. */
function certain<T>(result: Result<T>, about: string): T {
  if (!result.ok) throw new Error(`The sample lesson cannot be made: ${about}, ${result.error.code}.`);
  return result.value;
}

const typed = (value: number, figures: number): string =>
  plainText(Number(value.toPrecision(figures)), figures) ?? String(Number(value.toPrecision(figures)));

/** One more or one less in the last figure, whichever lies nearer: off by less than one part in a hundred of three figures. */
function roundedOnTheWay(value: number, figures: number): number {
  const rounded = Number(value.toPrecision(figures));
  const unit = tenTo(leadingPlace(rounded) - figures + 1);
  return value > rounded ? rounded + unit : rounded - unit;
}

/** Works a team's rows from top to bottom, each from the numbers it was given and the entries above. */
function teamEntries(
  activity: Activity,
  team: TeamPlan,
  { steps: count, manners = {}, tries = {}, minutesAgo = 1 }: Progress,
): readonly SampleEntry[] {
  const values: Record<string, number> = {};
  const figures = Number(defaultSettings.figures);
  const prepared = (step: CalculatedStep): FilledQuantity => {
    const cells: Record<string, string | undefined> = {};
    const numbers: Record<string, number> = {};
    for (const [name, source] of Object.entries(step.takes)) {
      if ('given' in source) cells[name] = team.givens[source.given];
      else numbers[name] = values[source.entryOf] ?? Number.NaN;
    }
    return certain(fillQuantity(quantities[step.quantity], cells, { numbers }), step.id);
  };
  const calculatedEntry = (step: CalculatedStep, manner: Manner | undefined): string => {
    const ready = prepared(step);
    let value = spanOver(ready, ready.quantity.relation).middle;
    if (manner && 'slip' in manner) {
      const slip = ready.quantity.slips.find(({ id }) => id === manner.slip);
      const wrong = slip && slipSpans(ready, slip)[0];
      if (!wrong) throw new Error(`The sample lesson cannot be made: ${step.id} has no slip ${manner.slip}.`);
      value = wrong.middle;
    }
    if (manner && 'as' in manner && manner.as === 'words') return sampleTexts.words;
    const text =
      'decimals' in ready.asked
        ? value.toFixed(ready.asked.decimals)
        : typed(
            manner && 'as' in manner && manner.as === 'rounded on the way' ? roundedOnTheWay(value, figures) : value,
            figures,
          );
    values[step.id] = Number(text);
    return manner && 'as' in manner && manner.as === 'with unit' ? `${text} ${step.unit}` : text;
  };
  const weighed = (expects: MeasuredStep['expects']): string => {
    const step = activity.steps.find(({ id }) => id === expects);
    if (step?.kind !== 'calculated')
      throw new Error(`The sample lesson cannot be made: nothing is expected by ${String(expects)}.`);
    const ready = prepared(step);
    const decimals = Math.max(0, Math.round(-Math.log10(defaultShelf.balanceReadabilityG)));
    return (spanOver(ready, ready.quantity.relation).middle * weighedShare).toFixed(decimals);
  };
  const whose = ({ id }: Step) => ({ step: id, key: team.key });
  const orderTyped = (step: OrderedStep, isWrong: boolean): string => {
    const order = [...lettersInOrder(step.procedure, whose(step))];
    // The last two change places: the flask is turned over before it is closed.
    const [last = '', before = ''] = [order.pop(), order.pop()];
    return [...order, ...(isWrong ? [last, before] : [before, last])].join(' ');
  };
  const entryOf = (step: Step): string => {
    const manner = manners[step.id];
    const as = manner && 'as' in manner ? manner.as : undefined;
    switch (step.kind) {
      case 'calculated':
        return calculatedEntry(step, manner);
      case 'measured': {
        const reading = weighed(step.expects);
        values[step.id] = Number(reading);
        return reading;
      }
      case 'ordered':
        return orderTyped(step, as === 'wrong order');
      case 'chosen': {
        const { right, others } = questionByName(step.question);
        const chosen = as === 'wrong choice' ? others[0] : right;
        return letterOfOption(step.question, chosen, whose(step));
      }
      case 'ticked':
        return tickTexts.answer(team.givens[step.substance.formula] ?? '');
      // The sample asks for no more than its activity does.
      case 'safety':
      case 'weighing':
        return '';
      case 'told':
        return sampleTexts.told;
    }
  };
  return activity.steps.slice(0, count).map((step, index) => ({
    className: team.className,
    team: team.team,
    step: step.id,
    entry: entryOf(step),
    tries: tries[step.id] ?? 1,
    minutesAgo: minutesAgo + minutesEach * (count - 1 - index),
  }));
}

/** The plan of the invented school: potassium bromide, two classes of six teams named after rocks. */
export const sampleSetup = (): Setup => ({
  activity: 'stock and dilution',
  givens: startingGivens(stockAndDilution({ fromRealStock: false })),
  ownNumbers: true,
  settings: defaultSettings,
  shelf: defaultShelf,
  classes: sampleTexts.classes,
});

/**
 * The invented school with its entries so far: rows that are right, rows with a slip that can be recognised, and blank
 * ones. Every value is worked from the team's own numbers, so that a change of the generator cannot leave it behind.
 *
 * @param inFile - Teams as a file has them: their letters go by the keys that they have there.
 */
export function sampleLesson(inFile: readonly Pick<TeamPlan, 'className' | 'team' | 'key'>[] = []): SampleLesson {
  const setup = sampleSetup();
  const activity = activityById(setup.activity);
  if (activity === undefined) throw new Error('The sample lesson has no activity.');
  const { teams } = certain(numbersForTeams(setup), 'numbers');
  const entries = setup.classes.flatMap(({ name, teams: names }, classAt) =>
    names.flatMap((team, teamAt) => {
      const plan = teams.find((line) => line.className === name && line.team === team);
      const done = progress[classAt]?.[teamAt];
      const key = inFile.find((line) => line.className === name && line.team === team)?.key;
      return plan && done ? teamEntries(activity, key === undefined ? plan : { ...plan, key }, done) : [];
    }),
  );
  return { school: sampleTexts.school, setup, entries, members: sampleTexts.members };
}
