/**
 * Tools and technique where a lesson says nothing else. Class B glassware and a balance that reads to 0.01 g are what schools
 * mostly have; the allowance for technique is a share of the expected reading (common practice, no source). Apart from the
 * other settings, since each check of a reading loads these.
 */
export const usualTools = {
  'glassware class': 'B',
  'glassware standard': 'ISO',
  balance: '0.01 g',
  'allowance for technique': '2 %',
} as const;
