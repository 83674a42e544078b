import type { SheetView } from '../view.ts';
import type { Place } from './cellName.ts';
import { texts } from './texts.ts';
import { whoseRows } from './whose.ts';
import { cellAt } from './workbookModel.ts';

/** Changes of so many cells are asked about each time. */
const many = 20;

export interface Question {
  readonly title: string;
  readonly body: string;
  readonly yes: string;
  readonly no: string;
  /** Asked anew each time; otherwise a yes holds for this window. */
  readonly eachTime: boolean;
}
interface Change {
  readonly kind: 'cells' | 'rows';
  readonly places: readonly Place[];
  /** Whose rows this window typed in last. */
  readonly mine: readonly string[];
}

/** What to ask before a change, or undefined where there is nothing to ask: how many cells, and whose. */
export function guardQuestion(sheet: SheetView, { kind, places, mine }: Change): Question | undefined {
  const cells = places.map((place) => cellAt(sheet, place));
  // Rows go with what fills them; only what is typed over it stands in its way.
  const covered = kind === 'cells' ? cells.filter((cell) => cell?.spilled).length : 0;
  const guarded = cells.filter((cell) => cell?.guarded === 'warning').length;
  const typed = cells.filter((cell) => cell && cell.input !== '' && !cell.spilled).length;
  const whose = whoseRows(
    sheet,
    places.map(({ row }) => row),
  );
  const others = whose.filter((name) => !mine.includes(name));
  const count = places.length;
  const block = count > 1 && typed > 0;
  const eachTime =
    covered > 0 || (others.length > 0 && (guarded > 0 || block)) || (count > many && (guarded > 0 || block));
  if (guarded === 0 && !eachTime) return undefined;
  const { title, yes, no } = texts.guardQuestion[kind];
  const body = [
    whose.length > 0 ? texts.belongTo(count, whose) : '',
    covered > 0 ? texts.fillsStop(covered) : guarded > 0 ? texts.holdsTogether(guarded) : '',
    texts.undoBrings(count),
    eachTime ? '' : texts.askedOnce,
  ];
  return { title: title(count), body: body.filter(Boolean).join(' '), yes, no, eachTime };
}
