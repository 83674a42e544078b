import { cautionList } from './cautionList.generated.ts';
import type { confidenceTexts } from './cautionTexts.ts';

export type Confidence = keyof typeof confidenceTexts;

/** One line of the table of limits: the code holds from one strength to another. */
export interface HazardLimit {
  readonly code: string;
  /** % by mass of what is counted; the end belongs to the range unless it is open. */
  readonly from: { readonly percent: number; readonly isOpen: boolean } | undefined;
  readonly to: { readonly percent: number; readonly isOpen: boolean } | undefined;
  /** g/mol of what the limit counts, such as cobalt; undefined where it counts the substance itself. */
  readonly countedGramsPerMole: number | undefined;
  readonly confidence: Confidence;
  /** No limit is known for this code: whether it holds for a diluted solution needs a test. */
  readonly isWithoutLimit: boolean;
  /** A least class: the true one may be stricter. */
  readonly isMinimum: boolean;
  readonly dependsOnPh: boolean;
}

export interface ListedHazards {
  readonly name: string;
  readonly spellings: readonly string[];
  /** Codes of the undiluted substance; undefined where the limits at 100 % say them. */
  readonly codes: readonly { readonly code: string; readonly confidence: Confidence }[] | undefined;
  readonly signalWord: 'Danger' | 'Warning' | '';
  readonly confidence: Confidence;
  readonly schoolUse: string;
  readonly limits: readonly HazardLimit[];
}

/** An end of a range; `!` turns round whether the end belongs to it. */
function end(text: string | undefined, isOpenByDefault: boolean): HazardLimit['from'] {
  if (text === undefined || text === '') return undefined;
  const isTurned = text.startsWith('!');
  return { percent: Number(isTurned ? text.slice(1) : text), isOpen: isTurned !== isOpenByDefault };
}

function limitOf(text: string): HazardLimit {
  const [code = '', from, to, counted, marks = ''] = text.split(',');
  return {
    code: marks.includes('3') ? `${code}/3` : code,
    from: end(from, false),
    to: end(to, true),
    countedGramsPerMole: counted === undefined || counted === '' ? undefined : Number(counted),
    confidence: marks.charAt(0) as Confidence,
    isWithoutLimit: marks.includes('n'),
    isMinimum: marks.includes('*'),
    dependsOnPh: marks.includes('p'),
  };
}

let list: readonly ListedHazards[] | undefined;

/** Every listed substance, read from the table on first use. */
export function listedHazards(): readonly ListedHazards[] {
  list ??= cautionList
    .trim()
    .split('\n')
    .map((line) => {
      const [name = '', spellings = '', codes = '', signal = '', confidence, schoolUse = '', limits = ''] =
        line.split('|');
      return {
        name,
        spellings: spellings.split(' '),
        codes:
          codes === '*'
            ? undefined
            : codes
                .split(' ')
                .filter((pair) => pair !== '')
                .map((pair) => ({
                  code: pair.split(':')[0] ?? '',
                  confidence: (pair.split(':')[1] ?? 'm') as Confidence,
                })),
        signalWord: signal === 'Danger' || signal === 'Warning' ? signal : '',
        confidence: confidence as Confidence,
        schoolUse,
        limits: limits === '' ? [] : limits.split(';').map(limitOf),
      };
    });
  return list;
}
