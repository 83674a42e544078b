import type { Reading } from '../../src/lab/judging/judgeReading.ts';
import { millilitres } from '../../src/measurement/quantity.ts';

/** 200 mL in a flask of that size, with the settings of a new plan. */
export const flaskReading: Reading = {
  expected: 200,
  unit: 'mL',
  of: 'flask',
  tools: [{ tool: 'flask', volume: millilitres(200) }],
  settings: {},
  decimalMark: 'point',
};
