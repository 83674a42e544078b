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
  /** Whether cells that people typed may be set aside with the sheets that they stand in. */
  | {
      readonly about: 'typed';
      readonly cells: number;
      readonly where: readonly { readonly className: string; readonly team: string; readonly cells: number }[];
    };
