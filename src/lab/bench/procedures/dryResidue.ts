import type { Procedure } from './procedure.ts';

/** A portion dried to constant mass; only for salts that survive it. Hot salt spatters, so protection is never waived. */
export const dryResidue = (): Procedure => ({
  name: 'weighed residue',
  sinceLayout: 3,
  actions: [
    { id: 'protect', text: ['goggles, filler on, hair back'] },
    { id: 'dish', text: ['weigh the clean, dry dish'] },
    { id: 'rinse', text: ['rinse pipette with solution'] },
    { id: 'portion', text: ['one pipette into the dish'] },
    { id: 'heat', text: ['heat gently until dry'] },
    { id: 'cool', text: ['with tongs, set it to cool'] },
    { id: 'weigh', text: ['weigh dish and salt'] },
    { id: 'again', text: ['repeat until two weighings agree'] },
  ],
  leftovers: 'Rinsings, leftovers: waste beaker.',
  rules: [
    {
      before: 'protect',
      after: 'rinse',
      weight: 'safety',
      ask: 'Stop: be protected before solution is drawn up, never by mouth, and before a drying salt can spatter. Where can it fly?',
    },
    {
      before: 'dish',
      after: 'portion',
      weight: 'needed',
      ask: 'How will you know later which part of the mass is the dish?',
    },
    {
      before: 'rinse',
      after: 'portion',
      weight: 'needed',
      ask: 'A pipette is often wet inside. What would a few drops of water do to your portion?',
    },
    { before: 'portion', after: 'heat', weight: 'needed', ask: 'What is there to dry in an empty dish?' },
    {
      before: 'heat',
      after: 'cool',
      weight: 'needed',
      ask: 'Hot glass looks just like cold glass. When does a dish need tongs and time?',
    },
    {
      before: 'cool',
      after: 'weigh',
      weight: 'needed',
      ask: 'Warm air rises from a hot dish. What does that do to the reading?',
    },
    {
      before: 'weigh',
      after: 'again',
      weight: 'needed',
      ask: 'With what can a second weighing agree?',
    },
  ],
  hints: [
    'Only the salt may count: not the dish, not the water, not the warm air above a hot dish.',
    'Two masses make a difference. Which things have to be done before each of them?',
    'Ask of each letter: would the balance tell the truth if this were still to come?',
  ],
});
