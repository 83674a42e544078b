import type { Procedure } from './procedure.ts';

/**
 * A portion by pipette, weighed in a closed vessel. Free in order: the empty weighing and the rinsing of the pipette. The
 * temperature is best taken before the portion, but is right later too.
 */
export const weighPortion = (): Procedure => ({
  name: 'weighed portion',
  sinceLayout: 3,
  actions: [
    { id: 'protect', text: ['goggles, pipette filler on'] },
    { id: 'temperature', text: ['wait for the table’s temperature'] },
    { id: 'empty', text: ['weigh the dry vessel and lid'] },
    { id: 'rinse', text: ['rinse pipette with solution'] },
    { id: 'deliver', text: ['one pipette into the vessel'] },
    { id: 'close', text: ['lid on at once'] },
    { id: 'full', text: ['weigh vessel, lid and solution'] },
    { id: 'waste', text: ['empty it into the waste beaker'] },
  ],
  leftovers: 'Rinsings: waste beaker too.',
  rules: [
    {
      before: 'protect',
      after: 'rinse',
      weight: 'safety',
      ask: 'Stop: be protected before any solution is drawn up, and never by mouth. Where could a splash go?',
    },
    {
      before: 'empty',
      after: 'deliver',
      weight: 'needed',
      ask: 'How will you know later which part of the mass is the vessel?',
    },
    {
      before: 'rinse',
      after: 'deliver',
      weight: 'needed',
      ask: 'A pipette is often wet inside. What would a few drops of water do to the density?',
    },
    { before: 'deliver', after: 'close', weight: 'needed', ask: 'How does the portion get in once the lid is on?' },
    {
      before: 'close',
      after: 'full',
      weight: 'needed',
      ask: 'Water leaves an open vessel while you read. And was the lid there the first time?',
    },
    { before: 'full', after: 'waste', weight: 'needed', ask: 'Can you still weigh a portion that is poured away?' },
    {
      before: 'temperature',
      after: 'deliver',
      weight: 'advised',
      ask: 'A tip: a warm solution fills the pipette with less mass, so look at the temperature early.',
    },
  ],
  hints: [
    'Only the solution may count: not the vessel, not the lid, not drops of water in the pipette.',
    'Two masses make a difference. Which things have to be just the same both times?',
    'Ask of each letter: would the balance tell the mass of the portion if this were still to come?',
  ],
});
