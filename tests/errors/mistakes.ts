import { ionMolarity } from '../../src/chemistry/ionMolarity.ts';
import { ions } from '../../src/chemistry/ions.ts';
import { massPercentOfDensity } from '../../src/chemistry/massPercentOfDensity.ts';
import { namedIon } from '../../src/chemistry/namedIon.ts';
import { readFormula } from '../../src/chemistry/readFormula.ts';
import { errorText } from '../../src/errors/errorText.ts';
import type { ErrorCode } from '../../src/errors/messages.ts';
import type { Result } from '../../src/errors/result.ts';
import { callFunction } from '../../src/functions/callFunction.ts';
import type { CellArgument } from '../../src/functions/entry.ts';
import { balanceReadability } from '../../src/lab/judging/readingTolerance.ts';
import { allActivities } from '../../src/lab/lesson/activities.ts';
import { numbersForTeams } from '../../src/lab/numbers/numbersForTeams.ts';
import { particlePicture } from '../../src/lab/particles/particlePicture.ts';
import { readSolutions } from '../../src/lab/particles/solutions.ts';
import { demandTexts, startTexts } from '../../src/lab/texts/numbers.ts';
import { particleTexts } from '../../src/lab/texts/particles.ts';
import type { CellValue } from '../../src/measurement/cellValue.ts';
import { gramsPerMillilitre, molesPerLitre, percent } from '../../src/measurement/quantity.ts';
import { linkProblems } from '../../src/workbook/linkProblems.ts';
import { readLesson } from '../../src/workbook/readLesson.ts';
import { succeeded } from '../chemistry/succeeded.ts';
import { startOf } from '../lab/otherActivities.ts';

export interface Mistake {
  readonly code: ErrorCode;
  /** What the message must show of what was typed. */
  readonly typed: string;
  readonly text: string;
}

const messageOf = (result: Result<unknown>): string => {
  if (result.ok) throw new Error(`A mistake was taken for ${JSON.stringify(result.value)}`);
  return errorText(result.error);
};
const called = (name: string, ...call: readonly CellArgument[]): string => {
  let found: unknown;
  try {
    found = callFunction(name, call);
  } catch (error) {
    return (error as Error).message;
  }
  throw new Error(`A mistake was taken for ${JSON.stringify(found)}`);
};
const formula = (text: string) => called('MOLARMASS', text);
const step = (given: CellArgument) => called('CHECKSTEP', 'mass of solute', given, '1');
const substance = (text: string) => succeeded(readFormula(text));
const setup = (id: string, givens: Record<string, string>) => {
  const start = startOf(id);
  return messageOf(numbersForTeams({ ...start, givens: { ...start.givens, ...givens } }));
};
const onLine = (changed: { density?: number; heavierPercent?: number; lighterPercent?: number }) =>
  messageOf(
    massPercentOfDensity({
      lighterPercent: percent(changed.lighterPercent ?? 14),
      lighterDensity: gramsPerMillilitre(1.0549),
      heavierPercent: percent(changed.heavierPercent ?? 18),
      heavierDensity: gramsPerMillilitre(1.0721),
      density: gramsPerMillilitre(changed.density ?? 1.06),
    }),
  );
const pictured = (id: string, givens: Record<string, string>) => {
  const activity = allActivities().find((one) => one.id === id);
  if (!activity) throw new Error(`No activity is called ${id}.`);
  const solutions = readSolutions({ activity, givens, decimalMark: 'point' });
  return messageOf(solutions.ok ? particlePicture(solutions.value) : solutions);
};
const planProblem = (find: string, ...more: readonly (readonly CellValue[])[]) => {
  const lines: readonly (readonly CellValue[])[] = [
    ['setting', 'value'],
    ['judge figures', 'many'],
    ['key', 'class', 'team', 'volume'],
    ['a1', '10A', 'Otter', '200'],
    ...more,
  ];
  const found = succeeded(readLesson(lines)).problems.find((problem) => problem.includes(find));
  if (found === undefined) throw new Error(`The Plan was taken without a word on ${find}.`);
  return found;
};
const [noAddress = ''] = linkProblems([
  ['step', 'level', 'your own wording', 'link'],
  ['mass of solute', 1, '', 'labrow.example'],
]);

const listed: Record<ErrorCode, readonly (readonly [typed: string, text: string])[]> = {
  'number-expected': [
    ['“abc”', called('ROUNDSIG', 'abc', 3)],
    ['TRUE', called('ROUNDSIG', true, 3)],
    ['2026-01-31', called('ROUNDSIG', new Date(Date.UTC(2026, 0, 31)), 3)],
    ['“ten”', called('SERIALDILUTION', 1, 'ten', 3)],
  ],
  'number-two-readings': [['“1,234”', called('PERCENTERROR', '1,234', 1)]],
  'number-out-of-range': [['“1e400”', called('ROUNDSIG', '1e400', 3)]],
  'figures-out-of-range': [['31', called('ROUNDSIG', 2.5, 31)]],
  'accepted-zero': [[' 0 ', called('PERCENTERROR', 1, 0)]],
  'mean-zero': [['1 and -1', called('PERCENTDIFFERENCE', 1, -1)]],
  'quantity-expected': [
    ['“five”', called('MOLES', 'KBr', 'five')],
    ['TRUE', called('MOLARITY', 'KBr', 1, true)],
  ],
  'unit-other-kind': [
    ['“2.5 kg”', called('SOLUTEMASS', 'KBr', 0.3, '2.5 kg')],
    ['“5 g/L”', called('DILUTIONVOLUME', '5 g/L', 1, 100)],
    ['“5.0 mL”', called('PERCENTERROR', '5.1 g', '5.0 mL')],
    ['“5 g/L”', called('CONVERTCONCENTRATION', '5 g/L', 'mol/L', 'mmol/L')],
  ],
  'unit-unknown': [
    ['“2 cups”', called('DILUTIONVOLUME', 2, 1, '2 cups')],
    ['“7.14 apples”', called('CHECKENTRY', '7', '7.14 apples')],
  ],
  'percent-two-readings': [['0.98', called('SOLUTEMASS', 'KBr', 0.3, 200, 0.98)]],
  'not-above-zero': [['0 mL', called('MOLARITY', 'KBr', 7.14, 0)]],
  'below-zero': [['-0.2 mol', called('GRAMS', 'KBr', -0.2)]],
  'glassware-size': [['300 mL', called('GLASSWARETOLERANCE', 'volumetric flask', 300)]],
  'formula-expected': [
    ['5', formula(5 as unknown as string)],
    ['blank', messageOf(readFormula(''))],
  ],
  'formula-too-long': [['“HHHH', formula('H'.repeat(251))]],
  'formula-too-deep': [['((((', formula('('.repeat(30))]],
  'formula-case': [
    ['“nacl”', formula('nacl')],
    ['“NaCl2x”', formula('NaCl2x')],
  ],
  'formula-character': [
    ['“$”', formula('Na$Cl')],
    ['“(s)”', formula('NaCl(s)')],
    ['“(III)”', formula('Fe(III)Cl3')],
    ['“,”', formula('NaCl,KBr')],
  ],
  'formula-part-missing': [
    ['“H2O·”', formula('H2O·')],
    ['“^2-”', formula('^2-')],
  ],
  'element-unknown': [
    ['“NaXy”', formula('NaXy')],
    ['“Fe2”', called('ELEMENTPERCENT', 'Fe2O3', 'Fe2')],
  ],
  'bracket-not-closed': [['“Ca(OH2”', formula('Ca(OH2')]],
  'bracket-not-opened': [
    ['“Ca)OH”', formula('Ca)OH')],
    ['“(NaCl]”', formula('(NaCl]')],
  ],
  'bracket-empty': [['“Ca()2”', formula('Ca()2')]],
  'separator-in-bracket': [['“(H2O·NaCl)”', formula('(H2O·NaCl)')]],
  'coefficient-before-formula': [['“2NaCl”', formula('2NaCl')]],
  'coefficient-out-of-range': [
    ['“0H2O”', formula('CuSO4·0H2O')],
    ['“n”', formula('CuSO4·nH2O')],
  ],
  'number-out-of-place': [['“Na(2Cl)”', formula('Na(2Cl)')]],
  'subscript-zero': [['“Na0”', formula('Na0')]],
  'subscript-too-large': [['“100000”', formula('Na100000')]],
  'subscript-not-whole': [['“Na1.5Cl”', formula('Na1.5Cl')]],
  'isotope-shape': [
    ['“[13]C”', formula('[13]C')],
    ['“[13CH4]”', formula('[13CH4]')],
  ],
  'isotope-unlikely': [['“99H”', formula('[99H]')]],
  'formula-look-alike': [
    ['“H20”', formula('H20')],
    ['“A1C13·6H20”', formula('A1C13·6H20')],
  ],
  'charge-two-readings': [['“Ca2+”', formula('Ca2+')]],
  'formula-with-charge': [['“SO4^2-”', messageOf(ions(substance('SO4^2-')))]],
  'atomic-weight-none': [['“Tc”', formula('Tc2O7')]],
  'element-not-in-formula': [['“N”', called('ELEMENTPERCENT', 'Fe2O3', 'N')]],
  'ions-weak': [['“CH3COOH”', called('IONS', 'CH3COOH')]],
  'ions-sparingly': [['“AgCl”', called('IONS', 'AgCl')]],
  'ions-unknown': [['“CCl4”', called('IONS', 'CCl4')]],
  'ion-not-in-formula': [['“Mg2+”', called('IONMOLARITY', 'CaCl2', 0.1, 'Mg2+')]],
  'ion-none': [['“C6H12O6”', messageOf(namedIon(substance('C6H12O6'), 'Na+'))]],
  'molarity-above-saturated': [
    ['1 mol/L', messageOf(ionMolarity({ formula: substance('Ca(OH)2'), molarity: molesPerLitre(1), ion: 'OH-' }))],
  ],
  'density-unlikely': [['1190 g/mL', called('REAGENTMOLARITY', 'HCl', '37.2 %', 1190)]],
  'purity-out-of-range': [['150 %', called('SOLUTEMASS', 'KBr', 0.3, 200, 150)]],
  'final-below-stock-volume': [['25 mL', called('DILUTIONMOLARITY', 2, 100, 25)]],
  'factor-not-above-one': [['0.1', called('SERIALDILUTION', 0.5, 0.1, 3)]],
  'stages-out-of-range': [
    ['101', called('SERIALDILUTION', 0.5, 2, 101)],
    ['3', called('SERIALDILUTION', 1, 1e200, 3)],
  ],
  'percent-of-line': [['-1 %', onLine({ lighterPercent: -1 })]],
  'percent-beyond-line': [['1.6 g/mL', onLine({ density: 1.6 })]],
  'lines-alike': [['14 %', onLine({ heavierPercent: 14 })]],
  'percent-unclear': [['“%”', called('CONVERTCONCENTRATION', 5, '%', 'g/L')]],
  'concentration-unit-unknown': [['“furlongs”', called('CONVERTCONCENTRATION', 5, 'furlongs', 'g/L')]],
  'conversion-needs': [
    ['g/L to mol/L', called('CONVERTCONCENTRATION', 5, 'g/L', 'mol/L')],
    ['ppm to g/L', called('CONVERTCONCENTRATION', 5, 'ppm', 'g/L')],
  ],
  'solute-over-whole': [['101 % w/w', called('CONVERTCONCENTRATION', 101, '% w/w', 'ppm')]],
  'target-not-below-stock': [['2 mol/L', called('DILUTIONVOLUME', 0.5, 2, 100)]],
  'plan-without-lines': [['“setting, value”', messageOf(readLesson([['Plan']]))]],
  'plan-setting': [
    ['“activity”', planProblem('“activity”')],
    ['“many”', planProblem('“many”')],
  ],
  'plan-line': [
    ['no team', planProblem('no team', ['b2', '10A', ''])],
    ['“a1”', planProblem('“a1”', ['a1', '10A', 'Heron'])],
    ['TRUE', planProblem('TRUE', ['b2', '10A', 'Heron', true])],
    ['“labrow.example”', noAddress],
  ],
  'quantity-unknown': [['“weight”', called('CHECKSTEP', 'weight', [['formula', 'KBr']], '1')]],
  'given-shape': [['3 columns', step([['formula', 'KBr', 'g']])]],
  'given-unknown': [
    [
      '“colour”',
      step([
        ['formula', 'KBr'],
        ['colour', 'red'],
      ]),
    ],
  ],
  'given-twice': [
    [
      '“formula”',
      step([
        ['formula', 'KBr'],
        ['formula', 'KI'],
      ]),
    ],
  ],
  'given-missing': [['molarity', step([['formula', 'KBr']])]],
  'hint-level': [
    [
      '4',
      called(
        'HINTSTEP',
        'stock volume',
        [
          ['stock molarity', 2],
          ['target molarity', 1],
          ['target volume', 100],
        ],
        4,
      ),
    ],
  ],
  'lesson-setting': [['“fine”', messageOf(balanceReadability({ balance: 'fine' }))]],
  'numbers-shelf': [
    ['9 mol/L', setup('stock and dilution', { 'stock molarity': '9', 'target molarity': '1' })],
    ['this shelf', setup('dilution', { 'stock molarity': '0.3', 'target molarity': '0.9' })],
    ['value typed', setup('stock and dilution', { 'stock molarity': '0.00100', 'target molarity': '0.000200' })],
    ...[
      demandTexts.flask({ size: 130, shelf: [50, 100, 200, 250, 500] }),
      demandTexts.portion({ pipettes: [1, 2, 5, 10, 20, 25] }),
      demandTexts.portionWithinStock({ flask: 100 }),
      demandTexts.portionWithinFlask({ flask: 100, portion: 75 }),
      demandTexts.massRange({ most: 220 }),
      demandTexts.withinTable({ molarity: 6.5, formula: 'KBr' }),
      demandTexts.densityDiffers({ molarity: 0.01 }),
      demandTexts.portionFine({ portion: 1, readability: 0.01 }),
      demandTexts.portionRange({ portion: 250, most: 220 }),
      startTexts.noPipette(10, 'target'),
      startTexts.noFlask,
      startTexts.nothingNear,
    ].map((parts): [string, string] => [
      parts.received,
      errorText({ code: 'numbers-shelf', argument: 'target molarity', ...parts }),
    ]),
  ],
  'numbers-solute': [
    ['“KBr”', setup('solution from a hydrate', { formula: 'KBr', ion: 'Br-' })],
    ['“CaCl2·2H2O”', setup('weighed residue', { formula: 'CaCl2·2H2O' })],
    ['“NaCl”', setup('concentrated reagent', { formula: 'NaCl' })],
  ],
  'numbers-start': [
    ['blank', setup('stock and dilution', { flask: '' })],
    ['“0”', setup('stock and dilution', { flask: '0' })],
    ['“juggling”', messageOf(numbersForTeams({ ...startOf('dilution'), activity: 'juggling' }))],
  ],
  'nothing-to-picture': [
    ['this activity', errorText({ code: 'nothing-to-picture', argument: 'molarity', ...particleTexts.noPicture })],
  ],
  'particles-too-far-apart': [
    [
      '2000 times',
      pictured('dilution', {
        formula: 'KBr',
        'stock molarity': '2.00',
        'target molarity': '0.00100',
        'target volume': '50',
      }),
    ],
  ],
  'ranges-unfit': [['8 rows', called('MOLES', Array(8).fill(['KBr']), Array(4).fill([1]))]],
  'one-cell-only': [['2 rows', called('COMPOSITION', [['KBr'], ['KI']])]],
  'columns-only': [['2 columns', called('CHECKENTRY', [['1', '2']], 1)]],
  'range-shape': [['one column', called('CHECKTEAM', [['a']], [['1']], [['figures']], [['x']], [['1']])]],
  'range-missing': [['steps', called('CHECKTEAM', [['a']], [['1']], [['figures', '3']], undefined, [['1']])]],
  'arguments-too-many': [['2', called('MOLARMASS', 'KBr', 'KI')]],
  'cell-missing': [
    ['volume', called('MOLARITY', 'KBr', 7.14, '')],
    ['element', called('ELEMENTPERCENT', 'KBr', '')],
  ],
  'cell-holds-error': [['“#N/A”', called('MOLES', 'KBr', '#N/A')]],
  'whole-number-expected': [['2.5', called('SERIALDILUTION', 0.5, 2, 2.5)]],
  'yes-or-no-expected': [['“maybe”', called('PERCENTERROR', 1, 2, 'maybe')]],
  'text-expected': [['5', called('ROUNDSIG', 2.5, 3, 5)]],
  'text-too-long': [['“9999', called('MOLES', 'KBr', '9'.repeat(301))]],
  'ratio-two-readings': [['“1:10”', called('SERIALDILUTION', 0.5, '1:10', 3)]],
  'choice-unknown': [
    ['“down”', called('ROUNDSIG', 2.675, 3, 'down')],
    ['“jug”', called('GLASSWARETOLERANCE', 'jug', 100)],
  ],
  'out-of-limits': [
    ['-5 %', called('CHECKENTRY', '1', 1, -5)],
    ['16', called('CHECKENTRY', '1', 1, 5, 16)],
  ],
  'target-zero': [['0', called('CHECKENTRY', '0', 0)]],
  'result-not-finite': [['amount', called('GRAMS', 'KBr', 1e308)]],
};

/** Every error there is, made by what people may type: through the functions, a lesson's numbers, or the cells of a Plan. */
export const mistakes: readonly Mistake[] = (Object.keys(listed) as ErrorCode[]).flatMap((code) =>
  listed[code].map(([typed, text]) => ({ code, typed, text })),
);
