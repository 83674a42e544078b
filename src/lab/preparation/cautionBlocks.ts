import { type Cautions, cautions } from '../../chemistry/cautions.ts';
import type { Formula } from '../../chemistry/readFormula.ts';
import { massPercentOf } from '../../chemistry/solutionStrength.ts';
import type { MolesPerLitre, Percent } from '../../measurement/quantity.ts';
import type { TeamUse } from './teamUse.ts';

/** In which form a substance is on the bench: as it comes, or in solutions from one molarity to another. */
export type Form =
  | { readonly kind: 'solid' }
  | { readonly kind: 'bottle'; readonly massPercent: number }
  | { readonly kind: 'solution'; readonly from: number; readonly to: number };

/** Cautions that hold for one form of a substance. */
export interface CautionBlock {
  readonly formula: string;
  readonly form: Form;
  readonly cautions: Cautions;
}

/** Cautions at one strength; for an element without an atomic weight, as if undiluted, the stricter side. */
export function cautionsAt(formula: Formula, molarity: MolesPerLitre): Cautions {
  const strength = massPercentOf(formula, molarity);
  return certain(formula, strength.ok ? strength.value : undefined);
}

/** Cautions only fail on a strength that is no share of a whole; a solution of nothing else is the substance itself. */
export function certain(formula: Formula, massPercent: Percent | undefined): Cautions {
  const found = cautions(formula, massPercent);
  if (found.ok) return found.value;
  const undiluted = cautions(formula);
  if (!undiluted.ok) throw new Error(`cautions for ${formula.text}: ${undiluted.error.code}`);
  return undiluted.value;
}

/**
 * Cautions for everything that is weighed, poured or mixed: the substance as it comes first, then its solutions, strongest
 * first. Strengths that are told the same stand in one block.
 */
export function cautionBlocks(uses: readonly TeamUse[], madeFromSolid: ReadonlySet<string>): readonly CautionBlock[] {
  const formulas = new Map<string, Formula>();
  const strengths = new Map<string, Set<MolesPerLitre>>();
  const bottles = new Map<string, Set<Percent>>();
  const weighed = new Set<string>(madeFromSolid);
  for (const use of uses) {
    const { text } = use.formula;
    formulas.set(text, use.formula);
    if (use.solid) weighed.add(text);
    const known = strengths.get(text) ?? new Set();
    for (const portion of [use.made, use.taken, use.madeByStaff, ...use.diluted]) {
      if (portion) known.add(portion.molarity);
    }
    strengths.set(text, known);
    const bottle = use.madeByStaff?.massPercent ?? use.poured?.massPercent;
    if (bottle !== undefined) bottles.set(text, (bottles.get(text) ?? new Set()).add(bottle));
  }
  const blocks: CautionBlock[] = [];
  for (const [text, formula] of formulas) {
    if (weighed.has(text))
      blocks.push({ formula: text, form: { kind: 'solid' }, cautions: certain(formula, undefined) });
    for (const massPercent of bottles.get(text) ?? []) {
      blocks.push({ formula: text, form: { kind: 'bottle', massPercent }, cautions: certain(formula, massPercent) });
    }
    const alike = new Map<string, { from: number; to: number; cautions: Cautions }>();
    for (const molarity of [...(strengths.get(text) ?? [])].sort((one, other) => other - one)) {
      const found = cautionsAt(formula, molarity);
      const key = JSON.stringify([found.signalWord, found.statements]);
      const block = alike.get(key);
      if (block) block.from = molarity;
      else alike.set(key, { from: molarity, to: molarity, cautions: found });
    }
    for (const { from, to, cautions: found } of alike.values()) {
      blocks.push({ formula: text, form: { kind: 'solution', from, to }, cautions: found });
    }
  }
  return blocks;
}
