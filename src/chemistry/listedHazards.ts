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
function end(text: string, isOpenByDefault: boolean): HazardLimit['from'] {
  if (text === '') return undefined;
  const isTurned = text.startsWith('!');
  return { percent: Number(isTurned ? text.slice(1) : text), isOpen: isTurned !== isOpenByDefault };
}

function limitOf(text: string): HazardLimit {
  const [code, from, to, counted, marks] = text.split(',') as [string, string, string, string, string];
  return {
    code: marks.includes('3') ? `${code}/3` : code,
    from: end(from, false),
    to: end(to, true),
    countedGramsPerMole: counted === '' ? undefined : Number(counted),
    confidence: marks.charAt(0) as Confidence,
    isWithoutLimit: marks.includes('n'),
    isMinimum: marks.includes('*'),
    dependsOnPh: marks.includes('p'),
  };
}

/** The columns of the table, as its first lines say them. */
type Line = [
  name: string,
  spellings: string,
  codes: string,
  signalWord: ListedHazards['signalWord'],
  confidence: Confidence,
  schoolUse: string,
  limits: string,
];

let list: readonly ListedHazards[] | undefined;

/** Every listed substance, read from the table on first use. */
export function listedHazards(): readonly ListedHazards[] {
  list ??= cautionList
    .trim()
    .split('\n')
    .map((line) => {
      const [name, spellings, codes, signalWord, confidence, schoolUse, limits] = line.split('|') as Line;
      return {
        name,
        spellings: spellings.split(' '),
        codes:
          codes === '*'
            ? undefined
            : codes
                .split(' ')
                .filter((pair) => pair !== '')
                .map((pair) => {
                  const [code, confidenceOfCode] = pair.split(':') as [string, Confidence];
                  return { code, confidence: confidenceOfCode };
                }),
        signalWord,
        confidence,
        schoolUse,
        limits: limits === '' ? [] : limits.split(';').map(limitOf),
      };
    });
  return list;
}
