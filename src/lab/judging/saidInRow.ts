import { letteredOptions } from '../bench/letteredOptions.ts';
import { optionReply } from '../bench/optionReply.ts';
import { orderedActions } from '../bench/orderedActions.ts';
import { procedureByName } from '../bench/procedures.ts';
import { questionByName } from '../bench/questions.ts';
import { safetyQuestion } from '../bench/safetyQuestion.ts';
import { isExitStep } from '../exit/exitStep.ts';
import { hintForStep } from '../hints/hintForStep.ts';
import type { Activity, CalculatedStep, MeasuredStep, OrderedStep, Step, TickedStep } from '../lesson/activity.ts';
import { cautionWords } from '../lesson/cautionWords.ts';
import type { GivenCells } from '../lesson/givenCells.ts';
import { quantities } from '../quantities.ts';
import { choiceTexts } from '../texts/choosing.ts';
import { exitTexts } from '../texts/exit.ts';
import { figureWords, remarks, type SlipId, slipTexts, unreadableTexts } from '../texts/feedback.ts';
import { orderTexts } from '../texts/ordering.ts';
import { readingAdvice, readingTexts } from '../texts/readings.ts';
import { tickTexts } from '../texts/ticks.ts';
import { differenceTexts, notALink, weighingTexts } from '../texts/weighing.ts';
import { feedbackText, filled } from './feedbackText.ts';
import { readingOf } from './judgeMeasured.ts';

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
      return orderedTexts(step);
    case 'chosen': {
      const { right, others } = questionByName(step.question);
      const letters = letteredOptions(step.question).map(({ letter }) => letter);
      const solute = team.givens[team.activity.numbers.formula];
      return [choiceTexts.oneLetter(letters), ...[right, ...others].map((option) => optionReply(option, solute))];
    }
    case 'ticked':
      return tickedTexts(step, team);
    case 'safety':
      return [
        choiceTexts.oneLetter(['a', 'd']),
        ...safetyQuestion(step).options.flatMap(({ right = '', ask }) => [right, ask]),
      ];
    case 'weighing':
      return [...Object.values(weighingTexts), readingTexts.decimals];
    case 'told':
      return step.evidence === 'link' ? [notALink] : [];
  }
}

/** What a row says of other rows, each with the longest title that it can name. */
function waiting(step: Step, { steps }: Activity): readonly string[] {
  if (step.kind === 'weighing') {
    const place = steps.findIndex(({ id }) => id === step.id);
    return steps.slice(0, place).map(({ title }) => filled(remarks.waitForRow, { row: title }));
  }
  const row = steps.map(({ title }) => title).reduce((one, other) => (other.length > one.length ? other : one), '');
  const [tick] = steps
    .flatMap(({ kind, title }) => (kind === 'ticked' || kind === 'safety' ? [title] : []))
    .sort((one, other) => other.length - one.length);
  return [
    ...(step.kind === 'calculated' ? [remarks.follows, remarks.needsRow, remarks.lookFirst] : []),
    ...(step.bench ? [remarks.waitForRow] : []),
  ]
    .map((text) => filled(text, { row }))
    .concat(step.bench && tick !== undefined ? filled(remarks.waitForTick, { row: tick }) : []);
}

/** Slips that need something in the formula, or a solid that is not pure: other teams never read of them. */
const needs: Readonly<Partial<Record<SlipId, RegExp | 'purity'>>> = {
  'water-of-hydration-left-out': /[·.*•]/,
  'one-water-only': /[·.*•]/,
  'water-number-on-one-atom': /[·.*•]/,
  'dot-as-times': /[·.*•]/,
  'group-subscript-ignored': /[([]/,
  'bracket-number-on-one-atom': /[([]/,
  'subscripts-ignored': /[\d₀-₉]/,
  'one-subscript-missed': /[\d₀-₉]/,
  'purity-ignored': 'purity',
  'purity-inverted': 'purity',
};

function canHappen(id: SlipId, step: CalculatedStep, givens: GivenCells): boolean {
  const need = needs[id];
  if (need === undefined) return true;
  const source = step.takes[need === 'purity' ? 'purity' : 'formula'];
  const cell = source !== undefined && 'given' in source ? String(givens[source.given] ?? '').trim() : '';
  return need === 'purity' ? cell !== '' : need.test(cell);
}

/** Slips that an activity adds to those of a quantity, whatever the quantity is. */
const ofActivity: readonly SlipId[] = ['other-given-used', 'planned-for-made', 'flasks-compared', 'power-of-ten'];

function calculatedTexts(step: CalculatedStep, { activity, givens }: RowOfTeam): readonly string[] {
  const quantity = quantities[step.quantity];
  const { asks } = step;
  const slips = [...quantity.slips.map(({ id }) => id), ...ofActivity].filter(
    (id): id is SlipId => id in slipTexts && canHappen(id as SlipId, step, givens),
  );
  const figures = { figures: figureWords.reduce((one, other) => (other.length > one.length ? other : one), '') };
  const isBrief = isExitStep(step.id);
  const wishes = { ...(asks ? { asks } : {}), isBrief };
  return [
    ...slips.map((id) => feedbackText({ status: 'not yet', slips: [id] }, quantity, wishes)),
    ...(activity.numbers.recipe === undefined ? [] : [feedbackText({ status: 'on target' }, quantity)]),
    ...(['rounding', 'cut off', 'table'] as const).map((because) =>
      feedbackText({ status: 'close', because, asked: { figures: 3 } }, quantity),
    ),
    ...(['unit of another kind', 'unit does not fit', 'other mark', 'sign', 'negative'] as const).map((question) =>
      feedbackText({ status: 'not yet', slips: [], question }, quantity, wishes),
    ),
    ...[remarks.closeFewFigures, remarks.wrongFigures, remarks.oneFigure].map((text) => filled(text, figures)),
    ...(isBrief
      ? [exitTexts.kept, remarks.notYetBrief, unreadableTexts['not a number']]
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
    ...(step.from === undefined
      ? []
      : [remarks.needsRow, remarks.lookFirst, ...Object.values(differenceTexts)].map((text) =>
          filled(text, { row: 'Loaded' }),
        )),
  ];
}

function orderedTexts({ procedure, handles }: Pick<OrderedStep, 'procedure' | 'handles'>): readonly string[] {
  const { rules, reminders = {} } = procedureByName(procedure);
  const known = orderedActions(procedure).map(({ letter }) => letter);
  const [first = '', second = ''] = known;
  const holding = rules.filter(({ when }) => when === undefined || handles !== undefined);
  return [
    ...holding.map(({ weight, ask }) =>
      weight === 'advised'
        ? `${orderTexts.works} ${ask}`
        : orderTexts.brokenPair({ sooner: first, later: second, ask }),
    ),
    // A substance may ask for its precaution; a tip and a reminder together are one text.
    ...Object.values(reminders).map((reminder) => `${orderTexts.works} ${reminder}`),
    orderTexts.wordsTyped(known),
    orderTexts.lettersAmiss({ known, strange: [], missing: known.slice(1), twice: [] }),
    orderTexts.buildAgain,
  ];
}

function tickedTexts({ substance }: TickedStep, { givens, decimalMark, studentsDilute }: RowOfTeam): readonly string[] {
  const answer = tickTexts.answer(String(givens[substance.formula] ?? '').trim());
  const lines = cautionWords({ substance, givens, decimalMark, studentsDilute });
  const { readFirst, nameIt, anotherSubstance, notYes } = tickTexts;
  return [readFirst, nameIt, anotherSubstance, notYes].map((said) => `${said(answer)}\n${lines}`);
}
