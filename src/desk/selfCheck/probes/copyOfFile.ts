import type { Work } from '../../file/ask.ts';
import type { Finding, LeftMarks, Trial } from '../finding.ts';
import { inFile, inSheet, take } from '../take.ts';
import { selfCheckWords } from '../words.ts';

const { saw } = selfCheckWords;

/** Where a sheet that was left for a copy says which file it was left in. */
const leftIn = 'A2';
/** Name of the mark on the sheet, and of the note beside it. */
export const markKey = 'labrow-trial';

/** What an earlier run left on purpose; read before a new sheet takes its place. */
export function* readLeft(): Work<LeftMarks | undefined> {
  const [place, file, tags, property, protections] = yield* take(
    inSheet(['getRange', leftIn], ['getValue']),
    inFile(['getId']),
    inSheet(['getDeveloperMetadata']),
    { on: 'store', calls: [['getDocumentProperties'], ['getProperty', markKey]] },
    inSheet(['getProtections', { on: 'app', calls: [['ProtectionType'], ['SHEET']] }]),
  );
  if (typeof place?.value !== 'string' || place.value === '') return undefined;
  return {
    isCopy: place.value !== file?.value,
    tags: count(tags?.value),
    properties: property?.value === 'left',
    protections: count(protections?.value),
  };
}

/** Of a list of the host's own objects only their number comes over. */
export const count = (value: unknown): number =>
  typeof value === 'number' ? value : Array.isArray(value) ? value.length : 0;

export function copyOfFile({ left }: Trial): Finding {
  const name = 'copy';
  if (left === undefined) return { name, verdict: 'not tried', saw: saw.copyFirst };
  if (!left.isCopy) return { name, verdict: 'not tried', saw: saw.copyOriginal };
  const hasTags = left.tags > 0;
  return {
    name,
    verdict: hasTags ? 'expected' : 'different',
    saw: saw.copy(hasTags, left.properties, left.protections > 0),
  };
}

/** Leaves the scratch sheet with marks on it, for a run in a copy of the file. */
export function* leaveMarks(): Work<boolean> {
  const facts = yield* take(
    inSheet(['addDeveloperMetadata', markKey, 'left', documentWide]),
    { on: 'store', calls: [['getDocumentProperties'], ['setProperty', markKey, 'left']] },
    inSheet(['getRange', leftIn], ['setNumberFormat', '@'], ['setValue', inFile(['getId'])]),
    inSheet(['protect'], ['removeEditors', inSheet(['protect'], ['getEditors'])]),
  );
  return facts.every(({ refused }) => refused === undefined);
}

/** Metadata for any script that may open the file: the copy's script is another one. */
export const documentWide = { on: 'app', calls: [['DeveloperMetadataVisibility'], ['DOCUMENT']] } as const;
