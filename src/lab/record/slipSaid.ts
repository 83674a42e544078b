import { remarks, type SlipId, type SlipText, slipTexts } from '../texts/feedback.ts';

const [before = '', behind = ''] = remarks.oneFits.split('{fits}').map((part) => part.replace(/\{.*$/, ''));

let slips: ReadonlyMap<string, SlipId> | undefined;

/** Every wording of every slip: no two slips share one. */
function slipsByWords(): ReadonlyMap<string, SlipId> {
  if (slips !== undefined) return slips;
  const found = new Map<string, SlipId>();
  for (const [id, text] of Object.entries(slipTexts) as [SlipId, SlipText & { in?: Record<string, SlipText> }][]) {
    for (const { fits } of [text, ...Object.values(text.in ?? {})]) found.set(fits, id);
  }
  slips = found;
  return found;
}

/** What a row's feedback says that its value matches: one slip or several; undefined for feedback that names none. */
export interface SlipSaid {
  /** As the row says it, without its opening and its question. */
  readonly words: string;
  /** Left out where several fit. */
  readonly slip?: SlipId;
}

/** Reads back from the feedback of a row which slip it names. */
export function slipSaid(lookAt: string): SlipSaid | undefined {
  const [several = ''] = remarks.severalFit.split('{fits}');
  // The longer opening first: it begins as the other does.
  for (const opening of [several, before]) {
    if (!lookAt.startsWith(opening)) continue;
    const end = lookAt.indexOf(behind, opening.length);
    const words = lookAt.slice(opening.length, end < 0 ? lookAt.length : end);
    const slip = opening === before ? slipsByWords().get(words) : undefined;
    return { words, ...(slip === undefined ? {} : { slip }) };
  }
  return undefined;
}
