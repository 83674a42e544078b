/** Is this formula one call to a function of the script and nothing besides? */
export function isWholeCall(formula: string, names: readonly string[]): boolean {
  const call = /^=\s*([A-Za-z_][\w.]*)\s*\(/.exec(formula);
  if (!call || !names.some((name) => name.toUpperCase() === call[1]?.toUpperCase())) return false;
  // The bracket that the call opens must be the last thing closed.
  let depth = 0;
  let quote = '';
  for (let index = call[0].length - 1; index < formula.length; index += 1) {
    const mark = formula[index] ?? '';
    if (quote) {
      if (mark === quote) quote = '';
    } else if (mark === '"' || mark === "'") quote = mark;
    else if (mark === '(') depth += 1;
    else if (mark === ')') {
      depth -= 1;
      if (depth === 0) return formula.slice(index + 1).trim() === '';
    }
  }
  return false;
}
