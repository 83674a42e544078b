import {
  ArraySize,
  CellError,
  EmptyValue,
  ErrorType,
  FunctionArgumentType,
  FunctionPlugin,
  type FunctionPluginDefinition,
  HyperFormula,
  SimpleRangeValue,
} from 'hyperformula';
import enUS from 'hyperformula/i18n/languages/enUS';
import { loadingMark } from './hostError.ts';
import type { SpilledValue } from './sheetState.ts';

/** A value handed to a script's function. A date is its serial number, marked. */
export type Argument = ArgumentCell | readonly (readonly ArgumentCell[])[];
export type ArgumentCell = number | string | boolean | { readonly date: number };

export type CallOutcome =
  | { readonly kind: 'rows'; readonly rows: readonly (readonly SpilledValue[])[] }
  | { readonly kind: 'error'; readonly message: string }
  | { readonly kind: 'reference'; readonly message: string }
  | { readonly kind: 'loading' };

/** One evaluation of a call to a script's function, as the engine meets it. */
export interface EngineCall {
  readonly name: string;
  readonly arguments: readonly Argument[];
  /** The cell of the formula: the engine's sheet number, row and column from 0. */
  readonly cell: EngineAddress;
  /** The call is the whole formula, so that the stand-in lays out its rows itself. */
  readonly whole: boolean;
}
export interface EngineAddress {
  readonly sheet: number;
  readonly row: number;
  readonly col: number;
}
export interface ScriptBinding {
  call(call: EngineCall): CallOutcome;
  /** Does the cell's explicit number format make its number a date? Undefined where the cell has no such format. */
  isDate(address: EngineAddress): boolean | undefined;
  /** The size of a call inside a larger formula, as last seen in that cell. */
  innerSize(cell: EngineAddress): { readonly rows: number; readonly columns: number } | undefined;
  /** True while a formula that is one whole script call is being entered. */
  enteringWholeCall(): boolean;
  now(): number;
  /** HYPERLINK in a cell gave this address and this text. */
  linked(cell: EngineAddress, link: { readonly address: string; readonly label: string }): void;
}

// The engine does not publish the types of its syntax tree; these are the parts that are read here.
interface Tree {
  readonly type: string;
  readonly procedureName?: string;
  readonly args?: readonly Tree[];
  readonly value?: Tree;
  readonly left?: Tree;
  readonly right?: Tree;
  readonly expression?: Tree;
  readonly reference?: { toSimpleCellAddress(base: EngineAddress): EngineAddress };
}
interface State {
  readonly formulaAddress: EngineAddress;
  readonly formulaVertex?: { readonly formula: Tree };
}
interface TypedNumber {
  readonly val: number;
  getDetailedType(): string;
}

const volatile = new Set(['NOW', 'TODAY', 'RAND', 'RANDBETWEEN', 'RANDARRAY']);
const isVolatile = (tree: Tree | undefined): boolean =>
  !!tree &&
  ((tree.procedureName !== undefined && volatile.has(tree.procedureName)) ||
    [tree.value, tree.left, tree.right, tree.expression, ...(tree.args ?? [])].some(isVolatile));

const errorWords: Readonly<Record<string, string>> = {
  ...enUS.errors,
  [ErrorType.SPILL]: '#REF!',
  [ErrorType.CYCLE]: '#REF!',
};

class StillLoading extends Error {}

/** Binds to one engine the script's functions, and those of the host that the engine itself does otherwise. */
export function enginePlugins(names: readonly string[], binding: ScriptBinding): FunctionPluginDefinition[] {
  const asCell = (value: unknown, address: EngineAddress | undefined): ArgumentCell => {
    if (value instanceof CellError) {
      if (value.message === loadingMark) throw new StillLoading();
      return errorWords[value.type] ?? '#ERROR!';
    }
    if (value === EmptyValue || value === undefined || value === null) return '';
    if (typeof value === 'string' || typeof value === 'boolean') return value;
    const byFormat = address ? binding.isDate(address) : undefined;
    if (typeof value === 'number') return byFormat ? { date: value } : value;
    const typed = value as TypedNumber;
    const byType = /DATE|TIME/.test(typed.getDetailedType());
    return (byFormat ?? byType) ? { date: typed.val } : typed.val;
  };

  class ScriptFunctions extends FunctionPlugin {
    callScript(ast: unknown, state: unknown): unknown {
      const tree = ast as Tree;
      const at = state as State;
      const whole = at.formulaVertex?.formula === tree;
      if (tree.args?.some(isVolatile)) return new CellError(ErrorType.ERROR, loadingMark);
      let outcome: CallOutcome;
      try {
        const handed = (tree.args ?? []).map((argument): Argument => {
          if (argument.type === 'EMPTY') return '';
          const value: unknown = this.evaluateAst(argument as never, state as never);
          if (value instanceof SimpleRangeValue) {
            const corner = value.range?.start;
            return value.data.map((cells, row) =>
              cells.map((cell, column) =>
                asCell(cell, corner && { sheet: corner.sheet, row: corner.row + row, col: corner.col + column }),
              ),
            );
          }
          return asCell(value, argument.reference?.toSimpleCellAddress(at.formulaAddress));
        });
        outcome = binding.call({
          name: tree.procedureName ?? '',
          arguments: handed,
          cell: at.formulaAddress,
          whole,
        });
      } catch (thrown) {
        if (!(thrown instanceof StillLoading)) throw thrown;
        outcome = { kind: 'loading' };
      }
      if (outcome.kind === 'loading') return new CellError(ErrorType.ERROR, loadingMark);
      if (outcome.kind === 'error') return new CellError(ErrorType.ERROR, outcome.message);
      if (outcome.kind === 'reference') return new CellError(ErrorType.REF, outcome.message);
      const first = outcome.rows[0]?.[0] ?? '';
      const single = outcome.rows.length === 1 && outcome.rows[0]?.length === 1;
      return whole || single ? first : SimpleRangeValue.onlyValues(outcome.rows.map((row) => [...row]));
    }
    scriptSize(_ast: unknown, state: unknown): ArraySize {
      const size = binding.enteringWholeCall() ? undefined : binding.innerSize((state as State).formulaAddress);
      return size ? new ArraySize(size.columns, size.rows) : ArraySize.scalar();
    }
  }
  const scriptFunctions = Object.assign(ScriptFunctions, {
    implementedFunctions: Object.fromEntries(
      names.map((name) => [
        name.toUpperCase(),
        { method: 'callScript', sizeOfResultArrayMethod: 'scriptSize', vectorizationForbidden: true },
      ]),
    ),
  });

  class HostFunctions extends FunctionPlugin {
    now(ast: unknown, state: unknown): unknown {
      return this.#run('NOW', ast, state, () => binding.now());
    }
    today(ast: unknown, state: unknown): unknown {
      return this.#run('TODAY', ast, state, () => Math.floor(binding.now()));
    }
    /** The engine's own keeps the address with the parsed formula, which cells of the same text share. */
    hyperlink(ast: unknown, state: unknown): unknown {
      return this.#run('HYPERLINK', ast, state, (address: string, label = address) => {
        binding.linked((state as State).formulaAddress, { address, label });
        return label;
      });
    }
    /** The engine's own would make a text of any length. */
    rept(ast: unknown, state: unknown): unknown {
      return this.#run('REPT', ast, state, (text: string, count: number) => {
        if (count < 0) return new CellError(ErrorType.VALUE);
        const times = Math.trunc(count);
        return text.length * times > longestText ? tooLong() : text.repeat(times);
      });
    }
    /** Stands for a formula that the engine cannot take. */
    refused(ast: unknown, state: unknown): unknown {
      return this.#run(refusedName, ast, state, (words: string) => new CellError(ErrorType.ERROR, words));
    }
    #run(name: string, ast: unknown, state: unknown, body: (...args: never[]) => unknown): unknown {
      return this.runFunction((ast as { args: never }).args, state as never, this.metadata(name), body as never);
    }
  }
  const text = { argumentType: FunctionArgumentType.STRING } as const;
  const hostFunctions = Object.assign(HostFunctions, {
    implementedFunctions: {
      NOW: { method: 'now', parameters: [], isVolatile: true, returnNumberType: 'NUMBER_DATETIME' },
      TODAY: { method: 'today', parameters: [], isVolatile: true, returnNumberType: 'NUMBER_DATE' },
      HYPERLINK: { method: 'hyperlink', parameters: [text, { ...text, optionalArg: true }] },
      REPT: { method: 'rept', parameters: [text, { argumentType: FunctionArgumentType.NUMBER }] },
      [refusedName]: { method: 'refused', parameters: [text] },
    },
  });
  return [scriptFunctions, hostFunctions] as unknown as FunctionPluginDefinition[];
}

/** Longest text that a cell of the host holds. */
export const longestText = 50_000;
export const tooLong = (vertex?: unknown): CellError =>
  new CellError(
    ErrorType.ERROR,
    `Your input contains more than the maximum of ${longestText} characters in a single cell.`,
    vertex as never,
  );
const refusedName = 'STANDINREFUSED';
/** What the engine is given in place of a formula that it cannot take: an error with these words. */
export const refusedFormula = (words: string): string => `=${refusedName}("${words.replaceAll('"', '""')}")`;

/** The engine's English with the script's own names added; registered once for each set of names. */
export function engineLanguage(names: readonly string[]): string {
  const upper = names.map((name) => name.toUpperCase()).sort();
  const code = `standin:${upper.join(',')}`;
  if (!HyperFormula.getRegisteredLanguagesCodes().includes(code)) {
    const own = Object.fromEntries([...upper, refusedName].map((name) => [name, name]));
    HyperFormula.registerLanguage(code, { ...enUS, functions: { ...enUS.functions, ...own } });
  }
  return code;
}
