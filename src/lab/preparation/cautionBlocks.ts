import type { Cautions } from '../../chemistry/cautions.ts';
import { cautionsAt } from '../../chemistry/cautionsAt.ts';
import type { Formula } from '../../chemistry/readFormula.ts';
import type { MolesPerLitre, Percent } from '../../measurement/quantity.ts';
import type { StaffSolution } from './staffSolutions.ts';
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

/**
 * Cautions for everything that is weighed, poured or mixed: the substance as it comes first, then its solutions, strongest
 * first. Strengths that are told the same stand in one block.
 */
export function cautionBlocks(uses: readonly TeamUse[], staffMade: readonly StaffSolution[]): readonly CautionBlock[] {
  const formulas = new Map<string, Formula>();
  const strengths = new Map<string, Set<MolesPerLitre>>();
  const bottles = new Map<string, Set<Percent>>();
  const weighed = new Set<string>();
  const pours = (text: string, bottle: Percent) => bottles.set(text, (bottles.get(text) ?? new Set()).add(bottle));
  for (const { formula, from } of staffMade) {
    if (from.kind === 'solid') weighed.add(formula.text);
    else pours(formula.text, from.massPercent);
  }
  for (const use of uses) {
    const { text } = use.formula;
    formulas.set(text, use.formula);
    // What a dried portion leaves is weighed as the solid that it is.
    if (use.solid || use.driedCount > 0 || use.handled?.solid) weighed.add(text);
    const known = strengths.get(text) ?? new Set();
    for (const portion of [use.made, use.taken, use.madeByStaff, ...use.diluted]) {
      if (portion) known.add(portion.molarity);
    }
    if (use.handled?.molarity !== undefined) known.add(use.handled.molarity);
    strengths.set(text, known);
    if (use.handled?.massPercent !== undefined) pours(text, use.handled.massPercent);
    if (use.poured) pours(text, use.poured.massPercent);
  }
  const blocks: CautionBlock[] = [];
  for (const [text, formula] of formulas) {
    if (weighed.has(text))
      blocks.push({ formula: text, form: { kind: 'solid' }, cautions: cautionsAt(formula, 'undiluted') });
    for (const massPercent of bottles.get(text) ?? []) {
      blocks.push({
        formula: text,
        form: { kind: 'bottle', massPercent },
        cautions: cautionsAt(formula, { massPercent }),
      });
    }
    const alike = new Map<string, { from: number; to: number; cautions: Cautions }>();
    for (const molarity of [...(strengths.get(text) ?? [])].sort((one, other) => other - one)) {
      const found = cautionsAt(formula, { molarity });
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
