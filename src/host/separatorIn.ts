/** The separator of arguments in formulas that stand there; undefined where none of them tells. */
export function separatorIn(formulas: readonly (readonly string[])[]): ',' | ';' | undefined {
  const bare = formulas.flat().map((formula) => formula.replace(/"[^"]*"|'[^']*'/g, ''));
  if (bare.some((formula) => formula.includes(';'))) return ';';
  return bare.some((formula) => formula.includes(',')) ? ',' : undefined;
}
