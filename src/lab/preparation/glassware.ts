import type { Shelf } from '../lesson/setup.ts';
import { isSame } from '../numbers/isSame.ts';
import { liquidLeft } from './liquidLeft.ts';
import { withSparePieces } from './spare.ts';
import type { TeamUse } from './teamUse.ts';
import { vesselFor } from './vesselFor.ts';

export type GlasswareKind =
  | 'volumetric flask'
  | 'pipette'
  | 'graduated pipette'
  | 'pipette filler'
  | 'measuring cylinder'
  | 'beaker'
  | 'funnel'
  | 'weighing boat'
  | 'spatula'
  | 'stirring rod'
  | 'dropper'
  | 'wash bottle'
  | 'evaporating dish'
  | 'closed vessel'
  | 'thermometer'
  | 'waste beaker';

/** One line of what to lay out. */
export interface GlasswareCount {
  readonly kind: GlasswareKind;
  /** In mL; undefined where one size fits all. */
  readonly sizeMl: number | undefined;
  /** For the class that needs most: enough for the day where things are washed between classes. */
  readonly atOnce: number;
  readonly withSpare: number;
  /** For each class, in the order of the day's classes. */
  readonly perClass: readonly number[];
  /** For all classes together, where nothing is washed between them. */
  readonly allDay: number;
  /** False where the Plan's shelf has no such size. */
  readonly isOnShelf: boolean;
}

interface Piece {
  readonly kind: GlasswareKind;
  readonly sizeMl?: number;
  readonly isOnShelf?: false;
}

/** The pipettes that deliver a volume: one, or two in turn; one used twice is laid out once. */
function pipettesFor(volumeMl: number, { pipettesMl }: Shelf): readonly Piece[] {
  const pipette = (sizeMl: number): Piece => ({ kind: 'pipette', sizeMl });
  const single = pipettesMl.find((size) => isSame(size, volumeMl));
  if (single !== undefined) return [pipette(single)];
  for (const first of pipettesMl) {
    const second = pipettesMl.find((size) => isSame(first + size, volumeMl));
    if (second !== undefined) return first === second ? [pipette(first)] : [pipette(first), pipette(second)];
  }
  return [{ kind: 'graduated pipette', sizeMl: Number(volumeMl.toPrecision(3)), isOnShelf: false }];
}

/** What a team needs besides (common practice, no source). */
function piecesOf(use: TeamUse, shelf: Shelf): readonly Piece[] {
  const pieces: Piece[] = use.flasksMl.map((sizeMl) =>
    shelf.flasksMl.some((size) => isSame(size, sizeMl))
      ? { kind: 'volumetric flask', sizeMl }
      : { kind: 'volumetric flask', sizeMl, isOnShelf: false },
  );
  for (const volume of use.deliveredMl) pieces.push(...pipettesFor(volume, shelf));
  if (use.deliveredMl.length > 0) pieces.push({ kind: 'pipette filler' }, { kind: 'beaker' });
  if (use.solid) {
    pieces.push(
      { kind: 'beaker' },
      { kind: 'funnel' },
      { kind: 'weighing boat' },
      { kind: 'spatula' },
      { kind: 'stirring rod' },
    );
  }
  if (use.poured) pieces.push({ kind: 'measuring cylinder' }, { kind: 'beaker' }, { kind: 'stirring rod' });
  if (use.flasksMl.length > 0) pieces.push({ kind: 'dropper' }, { kind: 'wash bottle' });
  for (let dried = 0; dried < use.driedCount; dried += 1) pieces.push({ kind: 'evaporating dish' });
  for (let closed = 0; closed < use.closedCount; closed += 1) {
    pieces.push({ kind: 'closed vessel' }, { kind: 'thermometer' });
  }
  const left = liquidLeft(use);
  if (left > 0) pieces.push({ kind: 'waste beaker', sizeMl: vesselFor(left) });
  return pieces;
}

const order: readonly GlasswareKind[] = [
  'volumetric flask',
  'pipette',
  'graduated pipette',
  'pipette filler',
  'measuring cylinder',
  'beaker',
  'funnel',
  'weighing boat',
  'spatula',
  'stirring rod',
  'dropper',
  'wash bottle',
  'evaporating dish',
  'closed vessel',
  'thermometer',
  'waste beaker',
];

/** Glassware by kind and size, from the teams' own numbers. */
export function glasswareCounts(
  uses: readonly TeamUse[],
  {
    shelf,
    spare,
    classNames,
  }: { readonly shelf: Shelf; readonly spare: number; readonly classNames: readonly string[] },
): readonly GlasswareCount[] {
  const counts = new Map<string, { piece: Piece; byClass: Map<string, number> }>();
  for (const use of uses) {
    for (const piece of piecesOf(use, shelf)) {
      const key = `${piece.kind} ${piece.sizeMl ?? ''}`;
      const line = counts.get(key) ?? { piece, byClass: new Map() };
      line.byClass.set(use.team.className, (line.byClass.get(use.team.className) ?? 0) + 1);
      counts.set(key, line);
    }
  }
  return [...counts.values()]
    .map(({ piece, byClass }) => {
      const perClass = classNames.map((name) => byClass.get(name) ?? 0);
      const atOnce = Math.max(...perClass);
      return {
        kind: piece.kind,
        sizeMl: piece.sizeMl,
        atOnce,
        withSpare: withSparePieces(atOnce, spare),
        perClass,
        allDay: perClass.reduce((sum, count) => sum + count, 0),
        isOnShelf: piece.isOnShelf !== false,
      };
    })
    .sort(
      (one, other) => order.indexOf(one.kind) - order.indexOf(other.kind) || (one.sizeMl ?? 0) - (other.sizeMl ?? 0),
    );
}
