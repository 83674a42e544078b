/** Whose picture, and of which dilution of a row of flasks. */
export interface PictureAsked {
  /** Key of a team, or empty for the numbers that the plan starts from. */
  readonly key: string;
  /** From 1 on. */
  readonly step: number;
}

/** What a page to project is told, as one text. */
export const aboutPicture = ({ key, step }: PictureAsked): string => (step === 1 ? key : `${step}|${key}`);

/** The text read back; one that names no dilution is about the first. */
export function pictureAsked(about: string): PictureAsked {
  const [, step, key] = /^([1-9]\d?)\|(.*)$/s.exec(about) ?? [];
  return key === undefined ? { key: about, step: 1 } : { key, step: Number(step) };
}
