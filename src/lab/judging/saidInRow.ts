import { readFormula } from '../../chemistry/readFormula.ts';
import { isBlank } from '../../measurement/cellValue.ts';
import { letteredOptions } from '../bench/letteredOptions.ts';
import { optionReply } from '../bench/optionReply.ts';
import { orderedActions } from '../bench/orderedActions.ts';
import { procedureByName } from '../bench/procedures.ts';
import { questionByName } from '../bench/questions.ts';
import { safetyLetters } from '../bench/safetyQuestion.ts';
import { isExitStep } from '../exit/exitStep.ts';
import { hintForStep } from '../hints/hintForStep.ts';
import type { Activity, CalculatedStep, MeasuredStep, OrderedStep, Step, TickedStep } from '../lesson/activity.ts';
import { cautionWords } from '../lesson/cautionWords.ts';
import type { GivenCells } from '../lesson/givenCells.ts';
import type { SlipEntry } from '../quantities/quantityEntry.ts';
import { quantities } from '../quantities.ts';
import { choiceTexts } from '../texts/choosing.ts';
import { exitTexts } from '../texts/exit.ts';
import { badBriefly, remarks, unreadableTexts } from '../texts/feedback.ts';
import { orderTexts } from '../texts/ordering.ts';
import { readingAdvice, readingTexts } from '../texts/readings.ts';
import { tickTexts } from '../texts/ticks.ts';
import { differenceTexts, notALink, weighingTexts } from '../texts/weighing.ts';
import { activitySlipIds } from './activitySlips.ts';
import { feedbackText, filled } from './feedbackText.ts';
import { isFromFlaskBefore } from './judgeCalculated.ts';
import { readingOf } from './judgeMeasured.ts';
import { settingsRead } from './teamStep.ts';

interface RowOfTeam {
  readonly activity: Activity;
  readonly givens: GivenCells;
  readonly decimalMark: 'point' | 'comma';
  readonly studentsDilute: boolean;
}

/**
 * Every text of ours that a row can show to a team, so that its height holds the longest: what to look at, and the hint at
 * each level. Several slips that fit one number at once are asked about in no more letters than one.
 */
export function saidInRow(
  step: Step,
  team: RowOfTeam,
): { readonly lookAt: readonly string[]; readonly hint: readonly string[] } {
  const { activity, givens, decimalMark } = team;
  const hint = ([1, 2, 3] as const).map((level) =>
    hintForStep({ activity, stepId: step.id, level, givens, entries: {}, decimalMark }),
  );
  return { lookAt: [...lookAtTexts(step, team), ...waiting(step, activity)], hint };
}

function lookAtTexts(step: Step, team: RowOfTeam): readonly string[] {
  switch (step.kind) {
    case 'calculated':
      return calculatedTexts(step, team);
    case 'measured':
      return measuredTexts(step);
    case 'ordered':
      return [...orderedTexts(step), remarks.tooLong];
    case 'chosen': {
      const { right, others } = questionByName(step.question);
      const letters = letteredOptions(step.question).map(({ letter }) => letter);
      const solute = team.givens[team.activity.numbers.formula];
      const replies = [right, ...others].map((option) => optionReply(option, solute));
      return [...replies, choiceTexts.oneLetter(letters), remarks.tooLong];
    }
    case 'ticked':
      return [...tickedTexts(step, team), remarks.tooLong];
    case 'safety': {
      const options = safetyLetters(step);
      const replies = options.flatMap(({ item: { right, ask } }) => (right === undefined ? [ask] : [right, ask]));
      return [...replies, choiceTexts.oneLetter(options.map(({ letter }) => letter)), remarks.tooLong];
    }
    case 'weighing':
      return [...Object.values(weighingTexts), readingTexts.decimals];
    case 'told':
      return step.evidence === 'link' ? [notALink] : [];
  }
}

const longest = (texts: readonly string[]): string =>
  texts.reduce((one, other) => (other.length > one.length ? other : one));

/** What a row says of other rows, each with the longest title that it can name. */
function waiting(step: Step, { steps }: Activity): readonly string[] {
  if (step.kind === 'weighing') {
    const place = steps.findIndex(({ id }) => id === step.id);
    return steps.slice(0, place).map(({ title }) => filled(remarks.waitForRow, { row: title }));
  }
  const row = longest(steps.map(({ title }) => title));
  const ticks = steps.flatMap(({ kind, title }) => (kind === 'ticked' || kind === 'safety' ? [title] : []));
  return [
    ...(step.kind === 'calculated' ? [remarks.follows, remarks.needsRow, remarks.lookFirst] : []),
    ...(step.bench ? [remarks.waitForRow] : []),
  ]
    .map((text) => filled(text, { row }))
    .concat(step.bench && ticks.length > 0 ? filled(remarks.waitForTick, { row: longest(ticks) }) : []);
}

/** Slips need something in the formula, or a solid that is not pure: other teams never read of them. */
function canHappen(slip: SlipEntry, { takes }: CalculatedStep, givens: GivenCells): boolean {
  const cellOf = (name: 'formula' | 'purity') => {
    const source = takes[name];
    return source && 'given' in source ? givens[source.given] : undefined;
  };
  if ('value' in slip) return !['purity-ignored', 'purity-inverted'].includes(slip.id) || !isBlank(cellOf('purity'));
  const formula = readFormula(cellOf('formula'));
  return formula.ok && slip.molarMasses(formula.value).length > 0;
}

/** Numbers of the Plan, and settings, without which a row cannot be judged. */
const namesRead = (step: CalculatedStep): readonly string[] => [
  ...settingsRead(step),
  ...Object.values(step.takes).flatMap((source) => ('given' in source ? [source.given] : [])),
];

function calculatedTexts(step: CalculatedStep, { activity, givens }: RowOfTeam): readonly string[] {
  const quantity = quantities[step.quantity];
  const slips = [
    ...quantity.slips.filter((slip) => canHappen(slip, step, givens)).map(({ id }) => id),
    ...activitySlipIds(step.quantity),
    'power-of-ten' as const,
  ];
  const isBrief = isExitStep(step.id);
  const wishes = {
    special: isFromFlaskBefore(step, { stepOf: (id) => activity.steps.find((other) => other.id === id) })
      ? (['flask before'] as const)
      : [],
    asks: step.asks,
    isBrief,
  };
  return [
    ...slips.map((id) => feedbackText({ status: 'not yet', slips: [id] }, quantity, wishes)),
    ...(['unit of another kind', 'unit does not fit'] as const).map((question) =>
      feedbackText({ status: 'not yet', slips: [], question }, quantity, wishes),
    ),
    // No number of figures has longer words than these.
    ...[remarks.closeFewFigures, remarks.wrongFigures, remarks.oneFigure].map((text) =>
      filled(text, { figures: remarks.figuresAsked }),
    ),
    ...[remarks.onTarget, remarks.closeRounding, remarks.closeCutOff, remarks.closeTable],
    ...[remarks.otherMark, remarks.signOfError, remarks.negative],
    ...(isBrief
      ? [exitTexts.kept, remarks.notYetBrief, unreadableTexts['not a number'], badBriefly(longest(namesRead(step)))]
      : [remarks.notYet, ...Object.values(unreadableTexts)]),
  ];
}

function measuredTexts(step: MeasuredStep): readonly string[] {
  const advice = readingAdvice[readingOf(step)];
  const { onTarget, farAbove, farBelow, unit, unreadable, decimals } = readingTexts;
  return [
    ...(['above', 'below'] as const).flatMap((side) =>
      (['near', 'further'] as const).map((far) => [readingTexts[side], advice[side].ask, advice[side][far]].join(' ')),
    ),
    ...[onTarget, farAbove, farBelow, unit, unreadable, decimals, remarks.otherMark],
    ...[unreadableTexts['two numbers'], unreadableTexts['too long']],
    ...(step.from === undefined
      ? []
      : [remarks.needsRow, remarks.lookFirst, ...Object.values(differenceTexts)].map((text) =>
          filled(text, { row: 'Loaded' }),
        )),
  ];
}

function orderedTexts({ procedure, handles }: OrderedStep): readonly string[] {
  const { rules, reminders = {} } = procedureByName(procedure);
  const known = orderedActions(procedure).map(({ letter }) => letter);
  // A substance may ask for its precaution, where the row says what is handled.
  const holding = rules.filter(({ when }) => when === undefined || handles !== undefined);
  const tips = holding.filter(({ weight }) => weight === 'advised').map(({ ask }) => ask);
  const reminded = handles === undefined ? [] : Object.values(reminders);
  return [
    ...holding
      .filter(({ weight }) => weight !== 'advised')
      .map(({ ask }) => orderTexts.brokenPair({ sooner: 'a', later: 'b', ask })),
    // A reminder and a tip together are one text.
    ...[orderTexts.works, ...reminded.map((reminder) => `${orderTexts.works} ${reminder}`)].flatMap((works) => [
      works,
      ...tips.map((tip) => `${works} ${tip}`),
    ]),
    orderTexts.wordsTyped(known),
    // A letter is missing or there more than once, and two that are strange are still letters.
    orderTexts.lettersAmiss({ known, strange: ['y', 'z'], missing: known.slice(1), twice: known.slice(0, 1) }),
    orderTexts.buildAgain,
  ];
}

function tickedTexts({ substance }: TickedStep, { givens, decimalMark, studentsDilute }: RowOfTeam): readonly string[] {
  const answer = tickTexts.answer(String(givens[substance.formula] ?? '').trim());
  const lines = cautionWords({ substance, givens, decimalMark, studentsDilute });
  const { readFirst, nameIt, anotherSubstance, notYes } = tickTexts;
  return [readFirst, nameIt, anotherSubstance, notYes].map((said) => `${said(answer)}\n${lines}`);
}
