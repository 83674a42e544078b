import { argumentName, theArgument } from './argumentName.ts';
import { filledText } from './filledText.ts';
import { messages } from './messages.ts';
import { placeInText } from './placeInText.ts';
import type { ChemError } from './result.ts';

function fillings({ argument, expected, received, advice, brief, at }: ChemError) {
  return {
    argument,
    name: argumentName(argument),
    the: theArgument(argument),
    at: at ? ` at ${placeInText(at)}` : '',
    expected,
    received,
    advice,
    brief,
  };
}

/** The whole message: what is wrong, with what was typed, and what to do. */
export const errorText = (error: ChemError): string => filledText(messages()[error.code].full, fillings(error));

/** A few words beginning with ⚠, for one place of a range. */
export const shortErrorText = (error: ChemError): string => filledText(messages()[error.code].short, fillings(error));
