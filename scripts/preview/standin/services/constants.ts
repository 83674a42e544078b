import { constants } from '../hostObject.ts';

export const wrapStrategies = constants('WRAP', 'OVERFLOW', 'CLIP');
export const borderStyles = constants('DOTTED', 'DASHED', 'SOLID', 'SOLID_MEDIUM', 'SOLID_THICK', 'DOUBLE');
export const protectionTypes = constants('RANGE', 'SHEET');
export const recalculationIntervals = constants('ON_CHANGE', 'MINUTE', 'HOUR');
export const metadataVisibilities = constants('DOCUMENT', 'PROJECT');
export const buttonSets = constants('OK', 'OK_CANCEL', 'YES_NO', 'YES_NO_CANCEL');
export const buttons = constants('CLOSE', 'OK', 'CANCEL', 'YES', 'NO');
