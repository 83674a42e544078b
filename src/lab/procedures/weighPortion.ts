import type { Procedure } from './procedure.ts';

/**
 * A portion by pipette, weighed in a closed vessel. Free in order: the empty weighing and the rinsing of the pipette. The
 * temperature is best taken before the portion, but is right later too.
 */
export const weighPortion: Procedure = {
  name: 'weighed portion',
  actions: [
    { id: 'protect', text: 'Goggles on, and a filler on the pipette: nothing is drawn up by mouth.' },
    { id: 'temperature', text: 'Let the solution come to the temperature of the table, and write it down.' },
    { id: 'empty', text: 'Weigh the clean, dry vessel with its lid.' },
    { id: 'rinse', text: 'Rinse the pipette with a little of the solution, and throw that away.' },
    { id: 'deliver', text: 'Fill the pipette to its mark and let it run into the vessel.' },
    { id: 'close', text: 'Put the lid on at once.' },
    { id: 'full', text: 'Weigh the closed vessel with the solution in it.' },
  ],
  rules: [
    {
      before: 'protect',
      after: 'rinse',
      weight: 'safety',
      ask: 'Stop: be protected before any solution is drawn up. Where could a splash go?',
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
};
