/** The decimal mark of a locale such as `de_DE`; a locale that the script's runtime does not know has the point. */
export function decimalMarkOf(locale: string): 'point' | 'comma' {
  try {
    return (0.5).toLocaleString(locale.replace('_', '-')).includes(',') ? 'comma' : 'point';
  } catch {
    return 'point';
  }
}
