import { type DensityLine, densityLines } from '../../src/chemistry/densityLines.ts';
import { readFilledQuantity } from '../../src/lab/judging/judgeQuantity.ts';
import type { Random } from '../../src/lab/numbers/seededRandom.ts';
import { type QuantityName, quantities } from '../../src/lab/quantities.ts';
import type { CellValue } from '../../src/measurement/cellValue.ts';

/** A quantity with numbers in place, as a `given` table. */
export interface DrawnPlan {
  readonly quantity: QuantityName;
  readonly given: readonly (readonly [string, CellValue])[];
}

/** Thirty-two solutes of school laboratories: plain, with groups, hydrates and molecules. */
const solutes = [
  'NaCl',
  'KCl',
  'KBr',
  'KI',
  'NaOH',
  'NaHCO3',
  'Na2CO3',
  'NaNO3',
  'KNO3',
  'NH4Cl',
  'Na2SO4',
  'K2SO4',
  'MgSO4',
  'MgCl2',
  'CaCl2',
  'CuSO4',
  'CuSO4·5H2O',
  'MgSO4·7H2O',
  'Na2CO3·10H2O',
  'CaCl2·2H2O',
  'FeSO4·7H2O',
  'MgCl2·6H2O',
  'ZnSO4·7H2O',
  'Na2S2O3·5H2O',
  '(NH4)2SO4',
  'Ca(NO3)2',
  'Mg(NO3)2·6H2O',
  'Al2(SO4)3',
  'Ca(CH3COO)2',
  'C6H12O6',
  'C12H22O11',
  'KMnO4',
] as const;

const salts: readonly (readonly [formula: string, ions: readonly string[]])[] = [
  ['NaCl', ['Na+', 'Cl-']],
  ['MgCl2', ['Mg2+', 'Cl-']],
  ['CaCl2', ['Ca2+', 'Cl-']],
  ['Na2SO4', ['Na+', 'SO4^2-']],
  ['K2SO4', ['K+', 'SO4^2-']],
  ['(NH4)2SO4', ['NH4+', 'SO4^2-']],
  ['Al2(SO4)3', ['Al3+', 'SO4^2-']],
  ['Mg(NO3)2·6H2O', ['Mg2+', 'NO3-']],
];

/** Concentrated reagents as commonly sold, mass percent and density near those of the label. */
const reagents: readonly (readonly [
  formula: string,
  massPercent: readonly [number, number],
  density: readonly [number, number],
])[] = [
  ['HCl', [31, 38], [1.16, 1.19]],
  ['HNO3', [60, 70], [1.37, 1.42]],
  ['H2SO4', [92, 98], [1.82, 1.84]],
  ['CH3COOH', [80, 99.7], [1.05, 1.07]],
  ['NH3', [25, 30], [0.89, 0.91]],
  ['H3PO4', [75, 85], [1.58, 1.69]],
  ['H2O2', [27, 35], [1.1, 1.13]],
];

/** Solutes with many lines in the table of densities. */
const tabled = ['C12H22O11', 'NaCl', 'NaOH', 'KCl', 'CaCl2', '(NH4)2SO4', 'C6H12O6'] as const;

/** Lines of a table that stand side by side, or with one between them, two percent apart or more. */
const pairsOf = (lines: readonly DensityLine[]): readonly (readonly [DensityLine, DensityLine])[] =>
  lines.flatMap((line, at) =>
    lines
      .slice(at + 1, at + 3)
      .filter(({ massPercent }) => massPercent - line.massPercent >= 2)
      .map((other) => [line, other] as const),
  );

export const pick = <T>(random: Random, items: readonly T[]): T => items[Math.floor(random() * items.length)] as T;

/** A number drawn evenly on a logarithmic scale, as text with so many figures. */
const drawn = (random: Random, { from, to, figures = 3 }: { from: number; to: number; figures?: number }): string =>
  plainDigits(Number((from * (to / from) ** random()).toPrecision(figures)), figures);

/** Figures kept, without an exponent. */
function plainDigits(value: number, figures: number): string {
  const [, exponent] = value.toExponential(figures - 1).split('e');
  return value.toFixed(Math.max(0, figures - 1 - Number(exponent)));
}

const flasks = ['50', '100', '200', '250', '500'];

/** A stock and what it is diluted to: pipettes and flasks that exist, at least one part in twenty. */
function dilution(random: Random) {
  for (;;) {
    const finalVolume = pick(random, flasks);
    const taken = pick(random, ['5', '10', '15', '20', '25', '50', '100']);
    const factor = Number(finalVolume) / Number(taken);
    if (factor < 1.6 || factor > 21 || factor === 2) continue;
    const target = drawn(random, { from: 0.02, to: 0.4 });
    return { finalVolume, taken, target, stock: plainDigits(Number(target) * factor, 3) };
  }
}

/** Numbers for a quantity as lessons have them; one that is not named here has its arguments drawn by their kind. */
export function drawPlan(quantity: QuantityName, random: Random): DrawnPlan {
  switch (quantity) {
    case 'stock volume':
    case 'water volume': {
      const { stock, target, finalVolume } = dilution(random);
      return {
        quantity,
        given: [
          ['stock molarity', stock],
          ['target molarity', target],
          ['target volume', finalVolume],
        ],
      };
    }
    case 'dilution factor': {
      const { stock, target } = dilution(random);
      return {
        quantity,
        given: [
          ['stock molarity', stock],
          ['target molarity', target],
        ],
      };
    }
    case 'diluted molarity': {
      const { taken, finalVolume } = dilution(random);
      return {
        quantity,
        given: [
          ['stock molarity', drawn(random, { from: 0.1, to: 3 })],
          ['stock volume', taken],
          ['final volume', finalVolume],
        ],
      };
    }
    case 'ion molarity': {
      const [formula, ions] = pick(random, salts);
      return {
        quantity,
        given: [
          ['formula', formula],
          ['molarity', drawn(random, { from: 0.02, to: 2 })],
          ['ion', pick(random, ions)],
        ],
      };
    }
    case 'percent error': {
      const accepted = drawn(random, { from: 0.05, to: 5 });
      const off = (random() < 0.5 ? -1 : 1) * (0.02 + 0.25 * random());
      return {
        quantity,
        given: [
          ['measured', plainDigits(Number(accepted) * (1 + off), 3)],
          ['accepted', accepted],
        ],
      };
    }
    case 'density': {
      const volume = pick(random, ['5', '10', '15', '20', '25', '50']);
      const heaviness = 1.01 + 0.25 * random();
      return {
        quantity,
        given: [
          ['mass', (Number(volume) * heaviness).toFixed(2)],
          ['volume', volume],
        ],
      };
    }
    case 'mass percent': {
      const lines = (densityLines(pick(random, tabled)) ?? []).filter(({ massPercent }) => massPercent > 1);
      const [lighter, heavier] = pick(random, pairsOf(lines));
      // Some portions are a little lighter or heavier than both lines.
      const share = -0.2 + 1.4 * random();
      return {
        quantity,
        given: [
          ['density', (lighter.density + share * (heavier.density - lighter.density)).toFixed(5)],
          ['lighter percent', String(lighter.massPercent)],
          ['lighter density', lighter.density.toFixed(4)],
          ['heavier percent', String(heavier.massPercent)],
          ['heavier density', heavier.density.toFixed(4)],
        ],
      };
    }
    case 'reagent molarity': {
      const [formula, [least, most], [thin, dense]] = pick(random, reagents);
      return {
        quantity,
        given: [
          ['formula', formula],
          ['mass percent', drawn(random, { from: least, to: most })],
          ['density', drawn(random, { from: thin, to: dense })],
        ],
      };
    }
    default:
      return { quantity, given: drawnArguments(quantity, random) };
  }
}

/** How often a value that may be left out is given. */
const optionalShare = 0.4;
/** Draws before it is given up that the relation takes one. */
const mostDraws = 200;

/**
 * Arguments drawn by their kind alone, again until the relation takes them: what a quantity without a drawing of its own
 * above is tried with.
 */
function drawnArguments(quantity: QuantityName, random: Random): DrawnPlan['given'] {
  for (let draw = 0; draw < mostDraws; draw += 1) {
    const [salt, ions] = pick(random, salts);
    const takesIon = quantities[quantity].takes.some(({ kind }) => kind === 'ion');
    const given = quantities[quantity].takes.map(({ name, kind, optional }): readonly [string, CellValue] => {
      if (optional && random() >= optionalShare) return [name, ''];
      if (kind === 'formula') return [name, takesIon ? salt : pick(random, solutes)];
      if (kind === 'ion') return [name, pick(random, ions)];
      return [
        name,
        kind === 'volume' ? pick(random, flasks) : drawn(random, name === 'purity' ? purities : ranges[kind]),
      ];
    });
    const filled = given.filter(([, value]) => value !== '');
    if (readFilledQuantity(quantity, filled).ok) return given;
  }
  throw new Error(`No arguments drawn for ${quantity} are taken: give it a drawing of its own in drawPlan.`);
}

const purities = { from: 80, to: 98 };
const ranges = {
  mass: { from: 1, to: 50 },
  amount: { from: 0.002, to: 0.5 },
  concentration: { from: 0.05, to: 2 },
  density: { from: 1.01, to: 1.3 },
  percent: { from: 2, to: 40 },
  number: { from: 0.05, to: 5 },
} as const;
