/**
 * Whether a file’s locale, such as `en_GB`, leaves no doubt that formulas take a comma between arguments. English as it is
 * written where numbers have a decimal comma, such as `en_ZA`, is not among them: there it has to be tried.
 */
export const takesComma = (locale: string): boolean => /^en(_(US|GB|CA|AU|NZ|IE|IN))?$/.test(locale);
