/** A formula as it is printed: digits behind a symbol or a bracket are subscripts, those in front of a part are not. */
export const writtenFormula = (formula: string): string =>
  formula.replace(
    /([A-Za-z)\]}])(\d+)/g,
    (_, before: string, digits: string) =>
      before + [...digits].map((digit) => '₀₁₂₃₄₅₆₇₈₉'.charAt(Number(digit))).join(''),
  );
