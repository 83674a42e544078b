import { functionsIn } from './formulaText.ts';
import { hostFunctions } from './hostFunctions.ts';
import type { StandIn } from './openStandIn.ts';

export interface FunctionUse {
  readonly name: string;
  /** One of the script's own functions. */
  readonly own: boolean;
  readonly onHost: boolean;
  readonly inEngine: boolean;
  /** A formula that calls it. */
  readonly example: string;
}

/** Every function that formulas of the workbook call, and whether both the host and the engine under the stand-in know it. */
export function formulaFunctionsUsed({ book, functions }: Pick<StandIn, 'book' | 'functions'>): FunctionUse[] {
  const own = new Set(functions().map(({ name }) => name.toUpperCase()));
  const engine = new Set(book.engine.getRegisteredFunctionNames());
  const uses = new Map<string, FunctionUse>();
  const formulas = book.sheets.flatMap((sheet) => [
    ...[...sheet.cells.values()].map(({ content }) => (content?.kind === 'formula' ? content.formula : '')),
    ...sheet.rules.map(({ condition }) => (condition.kind === 'formula' ? (condition.text ?? '') : '')),
  ]);
  for (const formula of formulas) {
    for (const name of functionsIn(formula)) {
      if (uses.has(name)) continue;
      uses.set(name, {
        name,
        own: own.has(name),
        onHost: hostFunctions.has(name),
        inEngine: engine.has(name),
        example: formula,
      });
    }
  }
  return [...uses.values()].sort((one, other) => (one.name < other.name ? -1 : 1));
}
