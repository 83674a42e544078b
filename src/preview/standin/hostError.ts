import { type DetailedCellError, ErrorType } from 'hyperformula';

/** An error in a cell, in the host's words. */
export class HostError {
  readonly code: string;
  readonly message: string;
  constructor(code: string, message: string) {
    this.code = code;
    this.message = message;
  }
}

/** Marks, inside the engine, a result that the host has not worked out yet. */
export const loadingMark = 'Loading...';

const explained: Readonly<Partial<Record<ErrorType, string>>> = {
  [ErrorType.DIV_BY_ZERO]: 'Function DIVIDE parameter 2 cannot be zero.',
  [ErrorType.CYCLE]: 'Circular dependency detected.',
  [ErrorType.NAME]: 'Unknown function or range name.',
  [ErrorType.REF]: 'Reference does not exist.',
};

/** The engine's error as the host shows it; the loading state comes back as undefined. */
export function hostError(error: DetailedCellError): HostError | undefined {
  if (error.message === loadingMark) return undefined;
  switch (error.type) {
    case ErrorType.SPILL:
      return new HostError('#REF!', 'Array result was not expanded because it would overwrite data.');
    case ErrorType.CYCLE:
      return new HostError('#REF!', 'Circular dependency detected.');
    case ErrorType.ERROR:
      return new HostError('#ERROR!', /^Parsing error/.test(error.message) ? 'Formula parse error.' : error.message);
    default:
      return new HostError(error.value, error.message || explained[error.type] || '');
  }
}

/** What the host says when a call is not allowed or does not make sense. */
export class HostException extends Error {
  override name = 'Exception';
}
