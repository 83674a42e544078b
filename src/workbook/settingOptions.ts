import type { SettingName } from '../lab/lesson/setup.ts';
import { cautionLanguages } from '../lab/texts/cautionLanguages.ts';

/** Settings that take one of a few values, offered as a list in the Plan. */
export const settingOptions: Readonly<Partial<Record<SettingName, readonly string[]>>> = {
  periods: ['1', '2'],
  'chlorine on the table': ['35.45', '35.5'],
  'decimal mark': ['point', 'comma'],
  'judge figures': ['yes', 'no'],
  'highest help level': ['0', '1', '2', '3'],
  'exit questions': ['0', '1', '2', '3', '4'],
  'show exit checks': ['yes', 'no'],
  'glassware class': ['A', 'B'],
  'glassware standard': ['ISO', 'ASTM'],
  'work the dilution from': ['nominal stock', 'real stock'],
  'concentrated reagents': ['staff', 'students'],
  'safety questions': ['for Danger', 'always', 'never'],
  'cautions also in': ['none', ...Object.keys(cautionLanguages)],
  evidence: ['no', 'yes'],
  'checks come from': ['formulas', 'sidebar'],
};
