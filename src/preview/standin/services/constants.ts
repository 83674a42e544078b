import { constants } from '../hostObject.ts';

export const wrapStrategies = constants('WRAP', 'OVERFLOW', 'CLIP');
export const borderStyles = constants('DOTTED', 'DASHED', 'SOLID', 'SOLID_MEDIUM', 'SOLID_THICK', 'DOUBLE');
export const protectionTypes = constants('RANGE', 'SHEET');
export const recalculationIntervals = constants('ON_CHANGE', 'MINUTE', 'HOUR');
export const metadataVisibilities = constants('DOCUMENT', 'PROJECT');
export const booleanCriteria = constants(
  'CELL_EMPTY',
  'CELL_NOT_EMPTY',
  'CUSTOM_FORMULA',
  'NUMBER_BETWEEN',
  'NUMBER_EQUAL_TO',
  'NUMBER_GREATER_THAN',
  'NUMBER_LESS_THAN',
  'TEXT_CONTAINS',
  'TEXT_DOES_NOT_CONTAIN',
  'TEXT_ENDS_WITH',
  'TEXT_EQUAL_TO',
  'TEXT_STARTS_WITH',
);
export const validationCriteria = constants(
  'CHECKBOX',
  'NUMBER_BETWEEN',
  'NUMBER_GREATER_THAN_OR_EQUAL_TO',
  'NUMBER_LESS_THAN_OR_EQUAL_TO',
  'VALUE_IN_LIST',
);
export const buttonSets = constants('OK', 'OK_CANCEL', 'YES_NO', 'YES_NO_CANCEL');
export const buttons = constants('CLOSE', 'OK', 'CANCEL', 'YES', 'NO');
