import { type Pictogram, pictogramNamed } from '../../chemistry/pictogramNamed.ts';
import { decimalText } from '../judging/decimalText.ts';
import { preparationTexts as words } from '../texts/preparation.ts';
import type { CautionBlock } from './cautionBlocks.ts';
import type { DayPreparation } from './dayPreparation.ts';
import type { GlasswareCount } from './glassware.ts';
import { withSparePieces } from './spare.ts';
import { rinseMl, type StaffSolution } from './staffSolutions.ts';
import type { Handled } from './teamUse.ts';
import { type AnswerKnown, untold } from './untold.ts';

type SectionName = keyof typeof words.sections;

/** One line of what to prepare, the same in the sidebar, on paper and in the sheet. */
export interface PreparationRow {
  readonly section: SectionName;
  readonly what: string;
  /** As needed, and with spare; undefined where there is nothing to count. */
  readonly amount: number | undefined;
  readonly withSpare: number | undefined;
  readonly unit: string;
  readonly note: string;
  /** The amount for each class of the day, in their order; left out where it is not told class by class. */
  readonly byClass?: readonly { readonly className: string; readonly amount: number }[];
  /** Of a substance and its strength, in the first of its rows. */
  readonly pictograms?: readonly Pictogram[];
}

type Numbers = (value: number) => string;

/**
 * Everything to prepare as lines, in the order of the work. For everyone's eyes amounts are told coarsely, so that they
 * come to no team's answer however they are shared out, and what only staff need is left to the sidebar.
 */
export function preparationRows(
  day: DayPreparation,
  decimalMark: 'point' | 'comma',
  {
    forEveryone = false,
    answers = [],
  }: { readonly forEveryone?: boolean; readonly answers?: readonly AnswerKnown[] } = {},
): readonly PreparationRow[] {
  const rows = exactRows(day, decimalMark, forEveryone);
  if (!forEveryone) return rows;
  const counts = [
    1,
    day.uses.length + day.problems.length,
    ...[day.classes, day.solids, day.ownStocks, day.staffMade, day.poured].flatMap((all) =>
      all.map(({ teams }) => teams),
    ),
  ];
  const shares = [...new Set(counts)].filter((count) => count > 0).flatMap((count) => [count, count * (1 + day.spare)]);
  return rows.map((row) => {
    const { unit, withSpare, amount, byClass: _, ...rest } = row;
    const value = withSpare ?? amount;
    if (value === undefined || value <= 0 || !isMeasured(unit)) return row;
    return { ...rest, unit, amount: undefined, withSpare: untold({ value, unit, answers, shares }) };
  });
}

const isMeasured = (unit: string): unit is 'g' | 'mL' | 'L' => ['g', 'mL', 'L'].includes(unit);

function exactRows(
  day: DayPreparation,
  decimalMark: 'point' | 'comma',
  forEveryone: boolean,
): readonly PreparationRow[] {
  const number: Numbers = (value) => decimalText(value, decimalMark);
  const percentText = (share: number) => `${number(Number((share * 100).toFixed(2)))} %`;
  const teams = day.uses.length + day.problems.length;
  const byClass = (amounts: readonly number[]): Pick<PreparationRow, 'byClass'> => ({
    byClass: day.classes.map(({ name }, at) => ({ className: name, amount: amounts[at] ?? 0 })),
  });
  const bare = { amount: undefined, withSpare: undefined, unit: '' };
  return [
    {
      section: 'day',
      what: day.activity.title,
      ...bare,
      note: `${words.day(day.classes.length, teams)}. ${words.spareNote({
        spare: percentText(day.spare),
        glassware: percentText(day.glasswareSpare),
      })}`,
    },
    ...day.problems.map(
      ({ team, message }): PreparationRow => ({
        section: 'day',
        what: `${words.unreadable}: ${team.className}, ${team.team}`,
        ...bare,
        note: message,
      }),
    ),
    ...day.solids.map(
      ({ formula, purityPercent, teams: count, grams, gramsWithSpare, perClass }): PreparationRow => ({
        section: 'solids',
        what: words.solid(formula, purityPercent === undefined ? '' : number(purityPercent)),
        amount: grams,
        withSpare: gramsWithSpare,
        unit: 'g',
        note: words.solidNote(count),
        ...byClass(perClass),
      }),
    ),
    ...day.handled.flatMap(({ formula, teams: count, ...handled }) =>
      handledStrengths(handled, number).map(
        ({ section, strength }): PreparationRow => ({
          section,
          what: words.handled(formula, strength),
          ...bare,
          note: words.handledNote(count),
        }),
      ),
    ),
    ...day.ownStocks.map(
      ({ formula, from, to, teams: count, madeMl, takenMl, perClass }): PreparationRow => ({
        section: 'stocks',
        what: words.ownStock(formula, words.strength(number(from), number(to))),
        amount: madeMl,
        withSpare: undefined,
        unit: 'mL',
        note:
          takenMl === 0 || forEveryone
            ? words.ownStockOnly(count)
            : words.ownStockNote({ teams: count, taken: number(takenMl) }),
        ...byClass(perClass),
      }),
    ),
    ...day.staffMade.map((solution) => madeRow(solution, number, forEveryone)),
    ...day.poured.map(
      ({ formula, massPercent, teams: count, millilitres, withSpare }): PreparationRow => ({
        section: 'make',
        what: words.poured(formula, words.bottleStrength(number(massPercent))),
        amount: millilitres,
        withSpare,
        unit: 'mL',
        note: words.pouredNote(count),
      }),
    ),
    ...layRows(day, number, forEveryone),
    ...balanceRows(day, number, forEveryone),
    ...(day.waterMl === 0
      ? []
      : [
          {
            section: 'water' as const,
            what: words.water,
            amount: undefined,
            withSpare: Number((day.waterMl / 1000).toFixed(2)),
            unit: 'L',
            note: words.waterNote,
          },
        ]),
    ...day.cautions.flatMap((block) => cautionRowsOf(block, { number, forEveryone })),
    { section: 'disposal', what: words.disposal, ...bare, note: words.disposalNote },
    ...day.waste.map(
      ({ formula, millilitres, perClass, vesselMl }): PreparationRow => ({
        section: 'disposal',
        what: words.waste(formula),
        amount: litres(millilitres),
        withSpare: undefined,
        unit: 'L',
        note: words.wasteVessel(vesselText(vesselMl)),
        ...byClass(perClass.map(litres)),
      }),
    ),
  ];
}

const litres = (millilitres: number): number => Number((millilitres / 1000).toFixed(2));
const vesselText = (sizeMl: number): string =>
  sizeMl < 1000 ? words.wasteSizes.mL(sizeMl) : words.wasteSizes.L(sizeMl / 1000);

/** Each form in which a substance stands ready, with the section that it is made ready in. */
const handledStrengths = (
  { solid, massPercent, molarity, typed }: Handled,
  number: Numbers,
): readonly { readonly section: 'solids' | 'make'; readonly strength: string }[] => [
  ...(solid || (massPercent === undefined && molarity === undefined)
    ? [{ section: 'solids' as const, strength: solid ? words.solidStrength : '' }]
    : []),
  ...(massPercent === undefined
    ? []
    : [{ section: 'make' as const, strength: words.bottleStrength(number(massPercent)) }]),
  ...(molarity === undefined
    ? []
    : [{ section: 'make' as const, strength: words.strength(typed ?? number(molarity), typed ?? number(molarity)) }]),
];

function madeRow(solution: StaffSolution, number: Numbers, forEveryone: boolean): PreparationRow {
  const {
    formula,
    molarity,
    typed = number(molarity),
    teams,
    neededMl,
    withSpareMl,
    flaskMl,
    fillings,
    from,
  } = solution;
  const flask = number(flaskMl);
  const how =
    from.kind === 'solid'
      ? words.madeFromSolid({ each: number(from.gramsEach), inAll: number(from.gramsInAll), flask, fillings })
      : words.madeFromBottle({
          each: number(from.millilitresEach),
          inAll: number(from.millilitresInAll),
          flask,
          fillings,
          label: words.bottleStrength(number(from.massPercent)),
          isFromTable: from.isFromTable,
        });
  const isWatched = from.kind === 'bottle' && !from.isFromTable;
  return {
    section: 'make',
    what: words.made(formula.text, words.strength(typed, typed)),
    amount: Number(neededMl.toFixed(1)),
    withSpare: withSpareMl,
    unit: 'mL',
    note: forEveryone
      ? `${isWatched ? words.staffByDefault(teams) : words.forTeamsOnly(teams)} ${words.inSidebar}`
      : `${isWatched ? words.staffByDefault(teams) : words.forTeams(teams, number(rinseMl))} ${how}`,
  };
}

const layRows = (day: DayPreparation, number: Numbers, forEveryone: boolean): readonly PreparationRow[] => [
  ...(forEveryone ? withoutPipetteSizes(day) : day.glassware).map(
    ({ kind, sizeMl, atOnce, withSpare, allDay, perClass, isOnShelf }): PreparationRow => {
      const name = words.glassware[kind];
      return {
        section: 'lay',
        what: sizeMl === undefined ? name : words.sized(name, number(sizeMl)),
        amount: atOnce,
        withSpare,
        unit: words.piece(withSpare),
        // The teacher has a number for each class beside it.
        note: [forEveryone ? words.atOnce({ atOnce, allDay }) : '', isOnShelf ? '' : words.notOnShelf]
          .filter((part) => part !== '')
          .join(' '),
        byClass: day.classes.map((one, at) => ({ className: one.name, amount: perClass[at] ?? 0 })),
      };
    },
  ),
  ...(day.uses.length === 0
    ? []
    : [
        {
          section: 'lay' as const,
          what: words.goggles,
          amount: undefined,
          withSpare: undefined,
          unit: '',
          note: words.gogglesNote,
        },
      ]),
];

/** The volume that a pipette delivers is what a team has to find: all sizes of a kind count together. */
function withoutPipetteSizes({ glassware, glasswareSpare }: DayPreparation): readonly GlasswareCount[] {
  const kinds = [...new Set(glassware.map(({ kind }) => kind))];
  return kinds.flatMap((kind) => {
    const own = glassware.filter((one) => one.kind === kind);
    const [first] = own;
    if (first === undefined || (kind !== 'pipette' && kind !== 'graduated pipette')) return own;
    const perClass = first.perClass.map((_, at) => own.reduce((sum, one) => sum + (one.perClass[at] ?? 0), 0));
    const atOnce = Math.max(...perClass);
    return [
      {
        kind,
        sizeMl: undefined,
        perClass,
        atOnce,
        withSpare: withSparePieces(atOnce, glasswareSpare),
        allDay: own.reduce((sum, { allDay }) => sum + allDay, 0),
        isOnShelf: true,
      },
    ];
  });
}

function balanceRows({ balance }: DayPreparation, number: Numbers, forEveryone: boolean): readonly PreparationRow[] {
  if (!balance) return [];
  const { weighings, smallestG, largestG, readabilityG, maxG, balances } = balance;
  const remarks = [
    forEveryone
      ? words.balanceOnly(number(readabilityG))
      : words.balanceNote({
          smallest: number(smallestG),
          largest: number(largestG),
          readability: number(readabilityG),
        }),
    // A hundred times the readability keeps three figures, as the numbers for teams do.
    ...(smallestG < 100 * readabilityG * (1 - 1e-9) ? [words.tooFine] : []),
    ...(largestG > maxG ? [words.tooHeavy] : []),
  ];
  return [
    {
      section: 'balance',
      what: words.weighings(weighings),
      amount: balances,
      withSpare: undefined,
      unit: words.balances(balances),
      note: remarks.join(' '),
    },
  ];
}

/** Where there is no signal word: whether nothing holds; what nobody knows is told by the statements. */
const signalText = ({ signalWord, verdict }: CautionBlock['cautions']): string =>
  signalWord || (verdict === 'none' ? words.notClassified : verdict === 'hazards' ? words.withoutSignal : '');

/** For everyone all of it in plain words; for the teacher with codes, and how sure each is. */
function cautionRowsOf(
  { formula, form, cautions }: CautionBlock,
  { number, forEveryone }: { readonly number: Numbers; readonly forEveryone: boolean },
): readonly PreparationRow[] {
  const notes = cautions.statements.map(({ text, plain, advice }) =>
    words.fullLine(forEveryone ? plain : text, advice),
  );
  return notes
    .filter((note) => note !== '')
    .map(
      (note, index): PreparationRow => ({
        section: 'cautions',
        what: words.form(formula, form, number),
        amount: undefined,
        withSpare: undefined,
        unit: index === 0 ? signalText(cautions) : '',
        note,
        ...(index === 0 && cautions.pictograms.length > 0
          ? { pictograms: cautions.pictograms.map(pictogramNamed) }
          : {}),
      }),
    );
}
