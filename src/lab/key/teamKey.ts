import { errorText } from '../../errors/errorText.ts';
import type { CellValue } from '../../measurement/cellValue.ts';
import { readQuantity } from '../../measurement/readQuantity.ts';
import { withDecimalMark } from '../../measurement/withDecimalMark.ts';
import type { LettersOf } from '../bench/lettered.ts';
import { letterOfOption } from '../bench/letteredOptions.ts';
import { optionReply } from '../bench/optionReply.ts';
import { lettersInOrder } from '../bench/orderedActions.ts';
import { questionByName } from '../bench/questions.ts';
import { rightSafetyOption, safetyLetters } from '../bench/safetyQuestion.ts';
import { decimalText } from '../judging/decimalText.ts';
import { expectedValue } from '../judging/expectedValue.ts';
import type { FilledQuantity } from '../judging/filledQuantity.ts';
import { fillQuantity } from '../judging/fillQuantity.ts';
import { balanceReadability } from '../judging/readingTolerance.ts';
import type { Span } from '../judging/span.ts';
import { unitKind } from '../judging/unitKind.ts';
import { spanOver } from '../judging/worked.ts';
import type { Activity, CalculatedStep, MeasuredStep, Step } from '../lesson/activity.ts';
import { takesLessonFigures } from '../lesson/lessonFigures.ts';
import { readLessonSettings } from '../lesson/lessonSettings.ts';
import type { Settings, TeamPlan } from '../lesson/setup.ts';
import { plainText } from '../numbers/nearbyNumbers.ts';
import { quantities } from '../quantities.ts';
import { keyTexts as words } from '../texts/key.ts';
import { tickTexts } from '../texts/ticks.ts';
import { checkFigure } from './checkFigure.ts';

/** The answer to one step for one team, and what can be told of it without giving it away. */
export interface KeyLine {
  readonly step: string;
  readonly title: string;
  readonly unit: string;
  readonly answer: string;
  /** What the teacher should know of the answer, or why there is none. */
  readonly note: string;
  /** Figures that go with a right answer, for a table on paper; none where the answer rests on a reading of the team's own. */
  readonly checkFigures: readonly number[];
}

/** Worked from nominal numbers, unrounded until they are shown. */
interface Worked {
  readonly value: number;
  readonly rests: boolean;
}

/** The key of one team, worked out from its line of the Plan. Never fails: a step without an answer says why. */
export function teamKey({
  activity,
  team,
  settings: given,
  lettersByTeam = false,
}: {
  readonly activity: Activity;
  readonly team: TeamPlan;
  readonly settings: Settings;
  /** The sheets letter actions and options by the key of the team, and hand it to the check. */
  readonly lettersByTeam?: boolean;
}): readonly KeyLine[] {
  const settings = readLessonSettings(Object.entries(given));
  const { decimalMark } = settings;
  const worked = new Map<string, Worked>();
  const whose = ({ id }: Step): LettersOf => (lettersByTeam ? { step: id, key: team.key } : {});
  const stepOf = (id: string): Step | undefined => activity.steps.find((step) => step.id === id);

  function prepared(step: CalculatedStep): { ready?: FilledQuantity; rests: boolean; trouble: string } {
    const quantity = quantities[step.quantity];
    const cells: Record<string, CellValue> = {};
    const names: Record<string, string> = {};
    const numbers: Record<string, number> = {};
    let rests = false;
    for (const [name, source] of Object.entries(step.takes)) {
      if ('given' in source) {
        cells[name] = team.givens[source.given];
        names[name] = source.given;
        continue;
      }
      const from = worked.get(source.entryOf);
      if (from === undefined) return { rests, trouble: words.needs(stepOf(source.entryOf)?.title ?? source.entryOf) };
      numbers[name] = from.value;
      rests ||= from.rests;
    }
    const figuresRead = takesLessonFigures(quantity);
    const result = fillQuantity(quantity, cells, {
      ...(figuresRead ? { figures: settings.figures } : {}),
      decimals: settings.decimals,
      decimalMark,
      numbers,
      names,
    });
    return result.ok ? { ready: result.value, rests, trouble: '' } : { rests, trouble: errorText(result.error) };
  }

  const inMark = (text: string): string => withDecimalMark(text, decimalMark);

  const shown = (value: number, { asked }: FilledQuantity): string => {
    // A percent error of nothing, but for the last bits of binary arithmetic.
    if (Math.abs(value) < 1e-12) return '0';
    const text =
      'decimals' in asked
        ? value.toFixed(asked.decimals)
        : (plainText(Number(value.toPrecision(asked.figures)), asked.figures) ??
          String(Number(value.toPrecision(asked.figures))));
    return inMark(text);
  };

  function calculatedLine(step: CalculatedStep): Pick<KeyLine, 'answer' | 'note' | 'checkFigures'> {
    const { ready, rests, trouble } = prepared(step);
    if (!ready) return { answer: '', note: trouble, checkFigures: [] };
    const span: Span = spanOver(ready, ready.quantity.relation);
    // Atomic weights may be rounded: the ends of the span may round otherwise than its middle.
    const texts = [span.middle, span.low, span.high].map((value) => shown(value, ready));
    // What rests on a reading goes on as it stands on the page, as a team goes on from what it typed.
    const value = rests ? Number((texts[0] ?? '').replace(',', '.')) : span.middle;
    worked.set(step.id, { value, rests });
    return {
      answer: texts[0] ?? '',
      note: rests ? words.fromReading : '',
      checkFigures: rests ? [] : [...new Set(texts.map(checkFigure))],
    };
  }

  /** A reading with the figures that its tool shows: those of the balance for a mass, four for anything else. */
  function reading(expected: number, unit: string): string {
    const finest = unit === 'g' ? balanceReadability(given) : undefined;
    return finest?.ok
      ? expected.toFixed(Math.max(0, -finest.value.lastPlace))
      : decimalText(Number(expected.toPrecision(4)), 'point');
  }

  function measuredLine({ id, expects, unit }: MeasuredStep): Pick<KeyLine, 'answer' | 'note'> {
    let expected: number | undefined;
    if (typeof expects === 'string') {
      expected = worked.get(expects)?.value;
      if (expected === undefined) return { answer: '', note: words.needs(stepOf(expects)?.title ?? expects) };
    } else if ('expected' in expects) {
      const found = expectedValue(expects, { givens: team.givens, decimalMark });
      if (!found.ok) return { answer: '', note: errorText(found.error) };
      expected = found.value;
    } else {
      const read = readQuantity(team.givens[expects.given], unitKind(unit), expects.given, { decimalMark });
      if (!read.ok) return { answer: '', note: errorText(read.error) };
      expected = read.value.value;
    }
    const shownReading = reading(expected, unit);
    // Later rows go on from the reading as it stands on the page.
    worked.set(id, { value: Number(shownReading), rests: true });
    return { answer: words.about(inMark(shownReading)), note: words.reading };
  }

  function lineOf(step: Step): Pick<KeyLine, 'answer' | 'note'> & Partial<Pick<KeyLine, 'checkFigures'>> {
    switch (step.kind) {
      case 'calculated':
        return calculatedLine(step);
      case 'measured':
        return measuredLine(step);
      case 'ordered':
        return { answer: lettersInOrder(step.procedure, whose(step)).join(' '), note: words.oneOrder };
      case 'chosen': {
        const { right } = questionByName(step.question);
        return {
          answer: letterOfOption(step.question, right, whose(step)),
          note: optionReply(right, team.givens[activity.numbers.formula]),
        };
      }
      case 'ticked':
        return { answer: tickTexts.answer(team.givens[step.substance.formula] ?? ''), note: '' };
      case 'safety': {
        const right = rightSafetyOption(step, { givens: team.givens, decimalMark });
        const found = safetyLetters(step, whose(step)).find(({ item }) => item.id === right);
        return { answer: found?.letter ?? '', note: found?.item.right ?? '' };
      }
      case 'weighing':
        return { answer: '', note: words.weighing };
      case 'told':
        return { answer: '', note: words.told };
    }
  }
  return activity.steps.map((step) => ({
    step: step.id,
    title: step.title,
    unit: step.unit,
    checkFigures: [],
    ...lineOf(step),
  }));
}
