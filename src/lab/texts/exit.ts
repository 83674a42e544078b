import type { Shown } from '../lesson/activity.ts';

type Given = { readonly given: string };
type Source = Given | { readonly entryOf: string };

/** The exit question in words: one for each seat of a team, with numbers of its own. */
export const exitTexts = {
  title: (seat: number): string => `Exit question, seat ${seat}`,
  kept: 'Kept. Your teacher shows the checks later.',
  massQuestion: 'Should the grams be more or fewer than the moles?',
  stockVolume: ({ stock, molarity, volume }: Readonly<Record<'stock' | 'molarity' | 'volume', Given>>): Shown[] => [
    'Volume of ',
    stock,
    ' mol/L solution for ',
    volume,
    ' mL of ',
    molarity,
    ' mol/L.',
  ],
  dilutedMolarity: ({ molarity, volume, flask }: Readonly<Record<'molarity' | 'volume' | 'flask', Given>>): Shown[] => [
    'Molarity of ',
    volume,
    ' mL of ',
    molarity,
    ' mol/L stock, made up to ',
    flask,
    ' mL.',
  ],
  mass: ({
    formula,
    molarity,
    volume,
    purity,
  }: Readonly<Record<'formula' | 'molarity' | 'volume', Given>> & { readonly purity: Source | undefined }): Shown[] => [
    'Mass of ',
    formula,
    ...(purity && 'given' in purity ? [{ ...purity, before: ' (', after: ' % pure)' }] : []),
    ' for ',
    volume,
    ' mL of ',
    molarity,
    ' mol/L.',
  ],
};
