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

/** What a row's feedback says of its value: what it matches, or what is asked where it matches more than one slip. */
type SlipSaid =
  /** As the row says it, without its opening and its question; what no slip is called has none. */
  { readonly words: string; readonly slip?: SlipId } | { readonly questions: string };

/** Reads back from the feedback of a row which slip it names. */
export function slipSaid(lookAt: string): SlipSaid | undefined {
  const [several = ''] = remarks.severalFit.split('{ask}');
  if (lookAt.startsWith(several)) return { questions: lookAt.slice(several.length) };
  if (!lookAt.startsWith(before)) return undefined;
  const end = lookAt.indexOf(behind, before.length);
  const words = lookAt.slice(before.length, end < 0 ? lookAt.length : end);
  const slip = slipsByWords().get(words);
  return { words, ...(slip === undefined ? {} : { slip }) };
}
