/** A part of a guide: what to do one after the other, or plain lines. */
export interface GuidePart {
  readonly title: string;
  readonly steps?: readonly string[];
  readonly lines?: readonly string[];
  /** File name of a picture that stands beside the part in the README. */
  readonly picture?: { readonly file: string; readonly shows: string };
}

/** A page for people, read in Help, on paper and in the README. */
export interface Guide {
  readonly title: string;
  readonly about: string;
  readonly parts: readonly GuidePart[];
}
