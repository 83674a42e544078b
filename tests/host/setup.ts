import { defaultSettings, defaultShelf } from '../../src/lab/lesson/defaultSettings.ts';
import type { Setup } from '../../src/lab/lesson/setup.ts';

/** A small invented lesson: two classes, the same numbers for all. */
export const setup: Setup = {
  activity: 'stock and dilution',
  givens: {
    formula: 'KBr',
    'stock molarity': '0.300',
    flask: '200',
    'target molarity': '0.120',
    'target volume': '50',
    ion: 'Br-',
    purity: '',
  },
  ownNumbers: false,
  settings: defaultSettings,
  shelf: { ...defaultShelf, flasksMl: [50, 100, 200, 250] },
  classes: [
    { name: 'Fern class', teams: ['Otter', 'Heron'] },
    { name: 'Moss class', teams: ['Newt'] },
  ],
};
