import { relativeMass } from '../../src/chemistry/elements.ts';
import { readFormula } from '../../src/chemistry/readFormula.ts';
import { type CheckedRow, type TeamTable, teamChecks } from '../../src/lab/judging/teamChecks.ts';
import { type Random, seededRandom } from '../../src/lab/numbers/seededRandom.ts';
import { drawPlan, pick } from './drawnPlans.ts';
import { classWeight, placeOf, typedTo } from './typing.ts';

/** A team's givens for the everyday activity, by name. */
type EverydayGivens = Readonly<Record<string, string>>;

const calculatedRows = [
  'molar mass',
  'moles of solute',
  'mass of solute',
  'mass weighed',
  'stock made',
  'dilution factor',
  'stock volume',
  'water volume',
  'diluted molarity',
] as const;
type Row = (typeof calculatedRows)[number];

/** A team's block with the entries typed so far; help is asked for in every row. */
function everydayTable(
  givens: EverydayGivens,
  entries: Readonly<Partial<Record<Row, string>>>,
  settings: TeamTable['settings'] = [],
): TeamTable {
  const names = Object.keys(givens);
  return {
    givenNames: names,
    givenValues: names.map((name) => givens[name]),
    settings: [['activity', 'stock and dilution'], ...settings],
    steps: ['', ...calculatedRows, ''],
    entries: ['Entry', ...calculatedRows.map((row) => entries[row] ?? ''), ''],
    helpWanted: ['Help', ...calculatedRows.map(() => 3), ''],
  };
}

function drawEverydayGivens(random: Random): EverydayGivens {
  const mass = Object.fromEntries(drawPlan('mass of solute', random).given);
  const dilution = Object.fromEntries(drawPlan('stock volume', random).given);
  return {
    formula: String(mass.formula),
    'stock molarity': String(dilution['stock molarity']),
    flask: String(mass.volume),
    purity: String(mass.purity),
    'target molarity': String(dilution['target molarity']),
    'target volume': String(dilution['target volume']),
    ion: '',
  };
}

/** What a team types that rounds every number as it types it and goes on from what it typed. */
function carriedForward(givens: EverydayGivens, random: Random): Record<Row, string> {
  const number = (name: string) => Number(givens[name]);
  const ties = () => (random() < 0.5 ? 'up' : 'even');
  const three = (value: number) => typedTo(value, placeOf(value, 3), ties());
  const formula = readFormula(givens.formula);
  if (!formula.ok) throw new Error(`${givens.formula} cannot be read`);
  const purity = givens.purity === '' ? 1 : number('purity') / 100;
  const weights = formula.value.atoms.reduce(
    (sum, { element, count }) =>
      sum + count * classWeight(relativeMass(element) ?? Number.NaN, { decimals: 2, random }),
    0,
  );
  const molarMass = typedTo(weights, -2, ties());
  const moles = three((number('stock molarity') * number('flask')) / 1000);
  const mass = three((Number(molarMass) * Number(moles)) / purity);
  // The team weighs what it planned, as finely as the balance shows.
  const weighed = typedTo(Number(mass), -2);
  const made = three((Number(weighed) * purity) / Number(molarMass) / (number('flask') / 1000));
  const factor = three(number('stock molarity') / number('target molarity'));
  const stock = three(number('target volume') / Number(factor));
  const left = number('target volume') - Number(stock);
  const water = typedTo(left, Math.max(placeOf(left, 3), placeOf(Number(stock), 3)), ties());
  const diluted = three((Number(made) * Number(stock)) / number('target volume'));
  return {
    'molar mass': molarMass,
    'moles of solute': moles,
    'mass of solute': mass,
    'mass weighed': weighed,
    'stock made': made,
    'dilution factor': factor,
    'stock volume': stock,
    'water volume': water,
    'diluted molarity': diluted,
  };
}

export interface ChainFindings {
  readonly teams: number;
  readonly rows: number;
  /** Rows of teams that round and carry forward which are not on target. */
  readonly notOnTarget: readonly string[];
  /** Rows after a wrong row that do not follow, and wrong rows that are not shown as such. */
  readonly notFollowing: readonly string[];
  /** Checks and hints that hold the answer. */
  readonly telling: readonly string[];
  readonly millisecondsATeam: number;
}

const describe = (givens: EverydayGivens, row: string, found: CheckedRow | undefined, entry: string) =>
  `${Object.values(givens).join(' ')}: ${row} ${entry} ${found?.check}: ${found?.lookAt}`;

/** Teams of the everyday activity that carry rounded numbers forward; half of them again with a wrong amount in moles. */
export function simulateChains({
  teams,
  seed,
  tellsAnswer,
}: {
  readonly teams: number;
  readonly seed: string;
  readonly tellsAnswer: (text: string, about: { answer: number; given: readonly string[] }) => boolean;
}): ChainFindings {
  const random = seededRandom(seed);
  const notOnTarget: string[] = [];
  const notFollowing: string[] = [];
  const telling: string[] = [];
  let rows = 0;
  let spent = 0;
  let calls = 0;
  const timed = (table: TeamTable) => {
    const from = performance.now();
    const found = teamChecks(table);
    spent += performance.now() - from;
    calls += 1;
    return found;
  };
  for (let team = 0; team < teams; team += 1) {
    const givens = drawEverydayGivens(random);
    const entries = carriedForward(givens, random);
    const checked = timed(everydayTable(givens, entries));
    calculatedRows.forEach((row, index) => {
      const found = checked[index + 1];
      rows += 1;
      if (found?.check !== 'on target') notOnTarget.push(describe(givens, row, found, entries[row]));
      const given = Object.values(givens);
      for (const text of [found?.lookAt ?? '', found?.hint ?? '']) {
        // Rows worked from other rows show those rows' numbers, which are the team's own.
        const own = row === 'diluted molarity' || row === 'stock made' ? Object.values(entries) : [];
        if (tellsAnswer(text, { answer: Number(entries[row]), given: [...given, ...own] }))
          telling.push(`${row}: ${text}`);
      }
    });
    const thousandfold = pick(random, [true, false]);
    const moles = Number(entries['moles of solute']) * (thousandfold ? 1000 : 1.37);
    const typed = typedTo(moles, placeOf(moles, 3));
    const heavy =
      (Number(entries['molar mass']) * Number(typed)) / (givens.purity === '' ? 1 : Number(givens.purity) / 100);
    const wrong = {
      ...entries,
      'moles of solute': typed,
      'mass of solute': typedTo(heavy, placeOf(heavy, 3)),
      'mass weighed': '',
    };
    const after = timed(everydayTable(givens, wrong));
    const [, , amount, mass, weighed] = after;
    const names = (found: CheckedRow | undefined) => found?.lookAt.includes('“Moles of solute”');
    if (
      amount?.check !== 'not yet' ||
      mass?.check !== 'follows' ||
      !names(mass) ||
      weighed?.check !== 'blank' ||
      !names(weighed)
    ) {
      notFollowing.push(describe(givens, `${typed} then`, mass, wrong['mass of solute']));
    }
  }
  return { teams, rows, notOnTarget, notFollowing, telling, millisecondsATeam: spent / calls };
}
