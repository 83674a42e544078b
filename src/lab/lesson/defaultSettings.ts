import type { Settings, Shelf } from './setup.ts';
import { usualTools } from './usualTools.ts';

/**
 * What a lesson starts with until the teacher says otherwise. A spare of 10 % is for what is spilled, taken twice or
 * broken (common practice, no source).
 */
export const defaultSettings: Settings = {
  activity: 'stock and dilution',
  periods: '2',
  figures: '3',
  'atomic-weight decimals': '2',
  'chlorine on the table': '35.45',
  'decimal mark': 'point',
  'judge figures': 'no',
  'highest help level': '3',
  'exit questions': '0',
  'show exit checks': 'no',
  ...usualTools,
  spare: '10 %',
  'spare glassware': '10 %',
  'work the dilution from': 'nominal stock',
  'concentrated reagents': 'staff',
  seed: '1',
  'safety questions': 'for Danger',
  'cautions also in': 'none',
  evidence: 'no',
  'checks come from': 'formulas',
};

/** Flasks and pipettes that a school cupboard commonly holds (common practice, no source), and one balance. */
export const defaultShelf: Shelf = {
  flasksMl: [100, 200, 250, 500],
  pipettesMl: [5, 10, 15, 20, 25],
  balanceReadabilityG: 0.01,
  balanceMaxG: 200,
};
