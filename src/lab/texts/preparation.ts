import type { Form } from '../preparation/cautionBlocks.ts';
import type { GlasswareKind } from '../preparation/glassware.ts';

const count = (number: number, one: string, more: string) => `${number} ${number === 1 ? one : more}`;

/** Every text for people about what to prepare: in the sidebar, in the Prepare sheet and on labels. */
export const preparationTexts = {
  sections: {
    day: 'the day',
    solids: 'solids to weigh out',
    stocks: 'stocks the teams make',
    make: 'make in advance',
    lay: 'set out',
    balance: 'balances',
    water: 'water',
    cautions: 'cautions',
    disposal: 'waste',
    sources: 'sources of the hazard data',
    practice: 'practice, not counted above',
  },
  /** Before the note of what a practice block would take. */
  practiceNote: (names: readonly string[]) => `Only if ${names.join(', ')} is done at the bench.`,
  day: (classes: number, teams: number) => `${count(classes, 'class', 'classes')}, ${count(teams, 'team', 'teams')}`,
  spareNote: ({ spare, glassware }: { spare: string; glassware: string }) =>
    `Spare: ${spare} of solids, stocks and water, ${glassware} of glassware. Change both in the Plan.`,
  solid: (formula: string, purity: string) =>
    purity === '' ? `${formula}, solid` : `${formula}, solid of ${purity} %`,
  solidNote: (teams: number) =>
    teams === 1 ? 'One team weighs its own portion.' : `${teams} teams weigh their own portions.`,
  ownStock: (formula: string, strength: string) => `${formula}, ${strength}`,
  ownStockNote: ({ teams, taken }: { teams: number; taken: string }) =>
    `Made by ${count(teams, 'team', 'teams')}, ${taken} mL of it for the dilutions.`,
  ownStockOnly: (teams: number) => `Made by ${count(teams, 'team', 'teams')}.`,
  made: (formula: string, strength: string) => `${formula}, ${strength}`,
  madeFromSolid: ({
    each,
    flask,
    fillings,
    inAll,
  }: {
    each: string;
    flask: string;
    fillings: number;
    inAll: string;
  }) =>
    fillings === 1
      ? `Weigh ${each} g, dissolve it in about half the water, let it come to room temperature, make up to ${flask} mL, mix and label.`
      : `Fill a ${flask} mL flask ${fillings} times: ${each} g each time, ${inAll} g in total. Dissolve in about half the water, let it come to room temperature, make up to the mark, mix and label.`,
  madeFromBottle: ({
    each,
    flask,
    fillings,
    inAll,
    label,
    isFromTable,
  }: {
    each: string;
    flask: string;
    fillings: number;
    inAll: string;
    label: string;
    isFromTable: boolean;
  }) =>
    [
      'Staff only, in the fume hood.',
      `Water in the beaker first, about half of ${flask} mL; then let ${each} mL of the ${label} bottle run in slowly while stirring, never the other way round.`,
      `Let it cool, then make up to ${flask} mL, mix and label.`,
      ...(fillings === 1 ? [] : [`Do this ${fillings} times; that takes ${inAll} mL from the bottle in total.`]),
      ...(isFromTable
        ? ['The strength is from a supplier’s table. If your bottle’s label says something else, calculate again.']
        : []),
    ].join(' '),
  inSidebar: 'How to make it, and what it takes: see Prepare in the sidebar.',
  poured: (formula: string, strength: string) => `${formula}, ${strength}`,
  pouredNote: (teams: number) =>
    `Concentrated: ${count(teams, 'team dilutes', 'teams dilute')} it, as set in the Plan. Only where your school’s risk assessment and the safety data sheet allow it: staff set out small portions in the fume hood and stand by; water in the beaker first, then the acid, slowly.`,
  staffByDefault: (teams: number) =>
    `${count(teams, 'team calculates and watches', 'teams calculate and watch')}; staff make it.`,
  forTeams: (teams: number, rinse: string) =>
    `For ${count(teams, 'team', 'teams')}, including ${rinse} mL each to rinse the pipette.`,
  forTeamsOnly: (teams: number) => `For ${count(teams, 'team', 'teams')}.`,
  glassware: {
    'volumetric flask': 'volumetric flask',
    pipette: 'pipette',
    'graduated pipette': 'graduated pipette or burette',
    'pipette filler': 'pipette filler',
    'measuring cylinder': 'measuring cylinder',
    beaker: 'beaker',
    funnel: 'funnel',
    'weighing boat': 'weighing boat',
    spatula: 'spatula',
    'stirring rod': 'stirring rod',
    dropper: 'dropper',
    'wash bottle': 'wash bottle with water',
    'evaporating dish': 'evaporating dish',
    'closed vessel': 'small vessel with a lid, for weighing',
    thermometer: 'thermometer',
    'waste beaker': 'waste beaker',
  } satisfies Readonly<Record<GlasswareKind, string>>,
  sized: (name: string, size: string) => `${name} ${size} mL`,
  atOnce: ({ atOnce, allDay }: { atOnce: number; allDay: number }) =>
    allDay === atOnce ? '' : `For the class that needs most; ${allDay} for the day without washing.`,
  handled: (formula: string, strength: string) => (strength === '' ? formula : `${formula}, ${strength}`),
  handledNote: (teams: number) => `${count(teams, 'team', 'teams')}. You decide how much: this activity has no recipe.`,
  waste: (formula: string) => `waste vessel, ${formula}`,
  wasteVessel: (size: string) =>
    `A labelled ${size} vessel for each class, or one that is emptied between classes. Not needed if your local rules allow the drain.`,
  wasteSizes: { mL: (size: number) => `${size} mL`, L: (size: number) => `${size} L` },
  notOnShelf: 'This size is not in the Plan’s list of glassware.',
  goggles: 'eye protection',
  gogglesNote: 'For everybody in the room, staff included.',
  piece: (number: number) => (number === 1 ? 'piece' : 'pieces'),
  weighings: (number: number) => count(number, 'weighing', 'weighings'),
  balances: (number: number) => (number === 1 ? 'balance' : 'balances'),
  balanceNote: ({ smallest, largest, readability }: { smallest: string; largest: string; readability: string }) =>
    `Reads to ${readability} g; loads from ${smallest} to ${largest} g without the boat. One balance for three teams is common practice.`,
  balanceOnly: (readability: string) => `Reads to ${readability} g. One balance for three teams is common practice.`,
  tooFine: 'The smallest load is less than a hundred times the balance’s reading step: use a finer balance for it.',
  tooHeavy: 'The largest load is too heavy for the balance.',
  water: 'deionised water',
  waterNote: 'Fills every flask. You need more for rinsing.',
  form: (formula: string, form: Form, number: (value: number) => string): string => {
    if (form.kind === 'solid') return `${formula}, as supplied`;
    if (form.kind === 'bottle') return `${formula}, ${number(form.massPercent)} % as supplied`;
    return `${formula}, ${preparationTexts.strength(number(form.from), number(form.to))}`;
  },
  strength: (from: string, to: string) => (from === to ? `${from} mol/L` : `${from} to ${to} mol/L`),
  notClassified: 'not classified',
  withoutSignal: 'no signal word',
  behind: (name: string) => `${name}: sources`,
  forStaff: (name: string) => `${name}, for staff`,
  source: (source: string) => `Sources: ${source}.`,
  handling: (handling: string) => `Handling: ${handling}`,
  staffWaste: (drain: string) => `Leftovers, where local rules allow it: ${drain}.`,
  hazardData: 'hazard data',
  hazardDate: (date: string) => `Classes and limits: CLP Annex VI as of ${date}; each substance names its own sources.`,
  hazardOld:
    'That is more than 18 months ago: get a newer copy of Labrow, and ask suppliers for their latest data sheets.',
  fullLine: (text: string, advice: string) => [text, advice].filter((words) => words !== '').join(' '),
  disposal: 'leftovers',
  disposalNote:
    'Local rules decide what may go down a drain and what is collected. Before the day, ask the person in charge of waste at your school.',
  unreadable: 'not counted',
  more: (rows: number) => `${rows} more lines: see Prepare in the sidebar.`,
  solidStrength: 'solid',
  bottleStrength: (massPercent: string) => `${massPercent} % by mass`,
  forDay: 'for the day',
} as const;
