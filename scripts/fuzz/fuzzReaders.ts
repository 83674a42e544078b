// Runs texts through every reader and says what went wrong; used by `npm run fuzz` and by a short run in the tests.
import { ions } from '../../src/chemistry/ions.ts';
import { molarMass } from '../../src/chemistry/molarMass.ts';
import { readFormula } from '../../src/chemistry/readFormula.ts';
import { errorText, shortErrorText } from '../../src/errors/errorText.ts';
import type { ChemError, Result } from '../../src/errors/result.ts';
import { type EntryKind, readEntry } from '../../src/lab/judging/readEntry.ts';
import { readNumber } from '../../src/measurement/readNumber.ts';
import { type QuantityKind, readQuantity } from '../../src/measurement/readQuantity.ts';
import { roundToFigures } from '../../src/measurement/roundToFigures.ts';
import { fuzzText, seededRandom } from './texts.ts';

const kinds: readonly QuantityKind[] = ['volume', 'mass', 'amount', 'concentration', 'density', 'percent'];
const entryKinds: readonly EntryKind[] = [...kinds, 'molar mass', 'molality', 'ratio'];
/** A digit of an entry, which may have the width of Chinese and Japanese. */
const digitOfEntry = /[\d\uff10-\uff19]/;
const slowMs = 100;

export interface FuzzReport {
  readonly texts: number;
  readonly formulas: number;
  readonly numbers: number;
  readonly quantities: number;
  readonly entries: number;
  readonly slowestMs: number;
  readonly failures: readonly string[];
}

function errorFault(error: ChemError): string | undefined {
  const text = errorText(error);
  if (!/^[A-Z“‘\d-][\s\S]*[.:] [\s\S]*[.?]$/.test(text) || /^Expected /.test(text))
    return `no sentence and advice: ${text}`;
  if (text.length > 330) return `${text.length} characters: ${text}`;
  if (!shortErrorText(error).startsWith('⚠ ')) return `short form: ${shortErrorText(error)}`;
  return /undefined|\[object/.test(text.replace(error.received ?? '', '')) ? `a hole: ${text}` : undefined;
}

export function fuzzReaders({ seed, texts }: { readonly seed: number; readonly texts: number }): FuzzReport {
  const random = seededRandom(seed);
  const failures: string[] = [];
  const counts = { formulas: 0, numbers: 0, quantities: 0, entries: 0 };
  let slowestMs = 0;
  const judged = <T>(result: Result<T>, isSound: (value: T) => boolean): string | undefined =>
    result.ok ? (isSound(result.value) ? undefined : 'no sound value') : errorFault(result.error);
  for (let run = 0; run < texts; run += 1) {
    const text = fuzzText(random);
    const began = performance.now();
    try {
      const formula = readFormula(text);
      const number = readNumber(text, 'value');
      const faults = [
        judged(
          formula,
          ({ atoms }) => atoms.length > 0 && atoms.every(({ count }) => Number.isFinite(count) && count > 0),
        ),
        judged(number, ({ value, figures }) => /\d/.test(text) && Number.isFinite(value) && figures >= 1),
      ];
      if (formula.ok) {
        counts.formulas += 1;
        if (!/[A-Z]/.test(text)) faults.push('a formula without a capital letter');
        faults.push(judged(molarMass(formula.value), (mass) => Number.isFinite(mass) && mass > 0));
        faults.push(judged(ions(formula.value), (found) => found.every(({ count }) => count > 0)));
      }
      if (number.ok) {
        counts.numbers += 1;
        faults.push(
          judged(roundToFigures(number.value, { figures: 3 }), (rounded) => {
            const again = readNumber(rounded, 'again');
            return (
              again.ok && Math.abs(again.value.value - number.value.value) <= 0.0051 * Math.abs(number.value.value)
            );
          }),
        );
      }
      for (const kind of kinds) {
        const quantity = readQuantity(text, kind, 'value');
        if (quantity.ok) counts.quantities += 1;
        faults.push(judged(quantity, ({ value }) => /\d/.test(text) && Number.isFinite(value)));
      }
      for (const kind of entryKinds) {
        const entry = readEntry(text, kind);
        if (entry.kind !== 'number') continue;
        counts.entries += 1;
        if (!digitOfEntry.test(text) || !Number.isFinite(entry.entry.value)) faults.push(`no sound entry of ${kind}`);
      }
      for (const fault of faults)
        if (fault !== undefined) failures.push(`${JSON.stringify(text.slice(0, 80))}: ${fault}`);
    } catch (thrown) {
      failures.push(`${JSON.stringify(text.slice(0, 80))}: threw ${String(thrown)}`);
    }
    const took = performance.now() - began;
    slowestMs = Math.max(slowestMs, took);
    // A pause of the machine is no fault of the reader: a slow text is run once more.
    if (took > slowMs) {
      const again = performance.now();
      readFormula(text);
      readNumber(text, 'value');
      if (performance.now() - again > slowMs)
        failures.push(`${JSON.stringify(text.slice(0, 80))}: ${took.toFixed(0)} ms`);
    }
  }
  return { texts, ...counts, slowestMs, failures };
}
