import { messages } from './messages.ts';
import type { ChemError } from './result.ts';

/** Fills the placeholders in one pass, so that braces in what a person typed stay as they are. */
const filled = (template: string, error: ChemError): string =>
  template.replace(/\{(argument|expected|received|advice|brief)\}/g, (_, name: keyof ChemError) =>
    String(error[name] ?? ''),
  );

/** The whole message: what was expected, what was received, what to do. */
export const errorText = (error: ChemError): string => filled(messages[error.code].full, error);

/** A few words beginning with ⚠, for one place of a range. */
export const shortErrorText = (error: ChemError): string => filled(messages[error.code].short, error);
