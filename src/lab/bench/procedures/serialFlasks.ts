import type { Procedure } from './procedure.ts';

/**
 * Two steps of a serial dilution: the first flask is finished before anything is taken from it. Free in order: whether
 * some water is in the flasks before the stock is, unless the stock heats its water.
 */
export const serialFlasks = (): Procedure => ({
  name: 'serial dilution',
  sinceLayout: 3,
  actions: [
    { id: 'protect', text: ['goggles, pipette filler on'] },
    { id: 'rinse flasks', text: ['rinse both flasks with water'] },
    { id: 'water', text: ['some water into both flasks'] },
    { id: 'first portion', text: ['run stock into the first'] },
    { id: 'first mark', text: ['swirl, fill first to the mark'] },
    { id: 'first mix', text: ['close and turn over the first'] },
    { id: 'rinse pipette', text: ['rinse pipette from the first'] },
    { id: 'second', text: ['the same again, into the second'] },
  ],
  leftovers: 'Rinsings, leftovers: waste beaker.',
  rules: [
    {
      before: 'protect',
      after: 'first portion',
      weight: 'safety',
      ask: 'Stop: be protected before any stock is drawn up, and never by mouth. Where could a splash go?',
    },
    {
      before: 'water',
      after: 'first portion',
      weight: 'safety',
      when: 'water first',
      ask: 'Stop: water goes in first, then this stock, slowly. A little water on top of it gets hot and can spit. Where would the drops fly?',
    },
    {
      before: 'rinse flasks',
      after: 'first portion',
      weight: 'needed',
      ask: 'What would rinsing and emptying do to the stock that you put in?',
    },
    {
      before: 'rinse flasks',
      after: 'water',
      weight: 'needed',
      ask: 'What would rinsing and emptying do to the water that you added?',
    },
    {
      before: 'first portion',
      after: 'first mark',
      weight: 'needed',
      ask: 'If the water is at the mark already, where will the stock take the level?',
    },
    {
      before: 'water',
      after: 'first mark',
      weight: 'needed',
      ask: 'If the water stands at the mark already, is there room for more?',
    },
    {
      before: 'first mark',
      after: 'first mix',
      weight: 'needed',
      ask: 'Water that comes in last stays on top for a long time. Is the solution the same all through?',
    },
    {
      before: 'first mix',
      after: 'rinse pipette',
      weight: 'needed',
      ask: 'Is what you rinse with the same as what you will measure, while the flask is not mixed?',
    },
    {
      before: 'rinse pipette',
      after: 'second',
      weight: 'needed',
      ask: 'Drops of the stronger stock are still in the pipette. What do they do to the next flask?',
    },
  ],
  reminders: { 'water first': 'Let this stock run in slowly and swirl: it heats the water.' },
  hints: [
    'Each flask is a dilution of its own. When is a flask ready to give a portion away?',
    'Sort the letters: those about the first flask, those about the second, those about the pipette.',
    'Ask of each letter: would the portion be right if this were still to come?',
  ],
});
