/** Where the caret stands in a formula that is being typed. */
export interface FormulaPlace {
  /** The name being typed, and where it begins. */
  readonly name?: { readonly text: string; readonly from: number };
  /** The innermost call that the caret is in, and which of its arguments, from 0. */
  readonly call?: { readonly name: string; readonly argument: number };
}

/** Reads a formula up to the caret. Text in quotes is skipped, brackets and braces nest. */
export function formulaPlace(text: string, caret: number): FormulaPlace | undefined {
  if (!text.startsWith('=')) return undefined;
  const before = text.slice(0, caret);
  const open: { name: string; argument: number }[] = [];
  let word = '';
  let at = 1;
  while (at < before.length) {
    const sign = before.charAt(at);
    if (sign === '"' || sign === "'") {
      const end = before.indexOf(sign, at + 1);
      if (end < 0) return open.length === 0 ? {} : innermost(open);
      word = '';
      at = end + 1;
      continue;
    }
    if (/[A-Za-z0-9_.]/.test(sign)) word += sign;
    else {
      if (sign === '(') open.push({ name: word.toUpperCase(), argument: 0 });
      else if (sign === '{') open.push({ name: '', argument: 0 });
      else if (sign === ')' || sign === '}') open.pop();
      else if (sign === ',' || sign === ';') {
        const last = open.at(-1);
        if (last) last.argument += 1;
      }
      word = '';
    }
    at += 1;
  }
  const place = innermost(open);
  return /^[A-Za-z]/.test(word) ? { ...place, name: { text: word, from: before.length - word.length } } : place;
}

function innermost(open: readonly { name: string; argument: number }[]): FormulaPlace {
  const call = open.filter(({ name }) => name !== '').at(-1);
  return call ? { call: { ...call } } : {};
}
