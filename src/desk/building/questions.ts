/** A class or a team that is gone, and one that is new in its place. */
export interface NamePair {
  readonly kind: 'class' | 'team';
  readonly from: string;
  readonly to: string;
  /** The class of a team, as it is to be called. */
  readonly className: string;
}

/** What a build has to know before anything is written. */
export type BuildQuestion =
  /** Whether a name was corrected, or stands for somebody else. */
  | { readonly about: 'names'; readonly pairs: readonly NamePair[] }
  /** Another activity or substance: it begins the next lesson, and that of classes with entries is put away. */
  | { readonly about: 'next lesson'; readonly from: string; readonly to: string; readonly where: readonly TypedWhere[] }
  /** Classes that began a lesson today already. */
  | { readonly about: 'same day'; readonly classes: readonly string[] }
  /** A lesson of one’s own beside the sample: whether that goes now. */
  | { readonly about: 'sample'; readonly classes: readonly string[]; readonly answers: number; readonly rows: number }
  /** Whether cells that people typed may be set aside with the sheets that they stand in. */
  | {
      readonly about: 'typed';
      readonly cells: number;
      readonly where: readonly { readonly className: string; readonly team: string; readonly cells: number }[];
    };

/** How many entries a class has. */
export interface TypedWhere {
  readonly className: string;
  readonly cells: number;
}
