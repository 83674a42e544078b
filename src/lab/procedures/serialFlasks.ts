import type { Procedure } from './procedure.ts';

/** Two steps of a serial dilution: the first flask is finished before anything is taken from it. */
export const serialFlasks: Procedure = {
  name: 'serial dilution',
  actions: [
    { id: 'rinse flasks', text: 'Rinse both flasks with water only, and empty them.' },
    { id: 'first portion', text: 'Let a pipette of stock run into the first flask.' },
    { id: 'first mark', text: 'Fill the first flask with water to its mark.' },
    { id: 'first mix', text: 'Close the first flask and turn it over many times.' },
    { id: 'rinse pipette', text: 'Rinse the pipette with solution from the first flask, and throw that away.' },
    { id: 'second portion', text: 'Let a pipette from the first flask run into the second.' },
    { id: 'second mark', text: 'Fill the second flask with water to its mark.' },
    { id: 'second mix', text: 'Close the second flask and turn it over many times.' },
    { id: 'label', text: 'Write the first molarity on the first flask.' },
  ],
  rules: [
    {
      before: 'rinse flasks',
      after: 'first portion',
      weight: 'needed',
      ask: 'What would rinsing and emptying do to the stock that you put in?',
    },
    {
      before: 'first portion',
      after: 'first mark',
      weight: 'needed',
      ask: 'If the water is at the mark already, where will the stock take the level?',
    },
    {
      before: 'first mark',
      after: 'first mix',
      weight: 'needed',
      ask: 'Water added after the mixing stays on top. Is the solution the same all through?',
    },
    {
      before: 'first mix',
      after: 'rinse pipette',
      weight: 'needed',
      ask: 'Is what you rinse with the same as what you will measure, while the flask is not mixed?',
    },
    {
      before: 'rinse pipette',
      after: 'second portion',
      weight: 'needed',
      ask: 'Drops of the stronger stock are still in the pipette. What do they do to the next flask?',
    },
    {
      before: 'second portion',
      after: 'second mark',
      weight: 'needed',
      ask: 'If the water is at the mark already, where will the portion take the level?',
    },
    {
      before: 'second mark',
      after: 'second mix',
      weight: 'needed',
      ask: 'Water added after the mixing stays on top. Is the solution the same all through?',
    },
    {
      before: 'first portion',
      after: 'label',
      weight: 'needed',
      ask: 'What would the label say while the flask is empty?',
    },
  ],
  hints: [
    'Each flask is a dilution of its own. When is a flask ready to give a portion away?',
    'Sort the letters: those about the first flask, those about the second, those about the pipette.',
    'Ask of each letter: would the portion be right if this were still to come?',
  ],
};
