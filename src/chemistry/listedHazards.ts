import { cautionList } from './cautionList.generated.ts';
import type { confidenceTexts } from './cautionTexts.ts';

export type Confidence = keyof typeof confidenceTexts;

/** One line of the table of limits: the code holds from one strength to another. */
export interface HazardLimit {
  readonly code: string;
  /** % by mass of what is counted; the end belongs to the range unless it is open. */
  readonly from: { readonly percent: number; readonly isOpen: boolean } | undefined;
  readonly to: { readonly percent: number; readonly isOpen: boolean } | undefined;
  /** g/mol of what the limit counts, such as cobalt; undefined where it counts the form that is weighed. */
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
  /** The first as people write it, the others with one kind of dot and of brackets. */
  readonly spellings: readonly string[];
  /** Other names, in small letters. */
  readonly names: readonly string[];
  /** Mass percent of the solution that is sold; undefined for a solid and for a pure liquid. */
  readonly soldPercent: number | undefined;
  /** Codes of the substance as it is sold. */
  readonly codes: readonly { readonly code: string; readonly confidence: Confidence }[];
  readonly confidence: Confidence;
  /** Whether what is left may go down the drain, at any strength or up to one in %; `never` is said of it by a source. */
  readonly drain: 'yes' | 'no' | 'never' | { readonly upTo: number };
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

const drainOf = (mark: string): ListedHazards['drain'] =>
  mark === 'd' ? 'yes' : mark === 'n' ? 'never' : mark === 'b' ? 'no' : { upTo: Number(mark.slice(1)) };

/** The columns of the table, as its first lines say them. */
type Line = [
  name: string,
  spellings: string,
  names: string,
  sold: string,
  codes: string,
  marks: string,
  schoolUse: string,
  limits: string,
];

function substanceOf(line: string): ListedHazards {
  const [name, spellings, names, sold, codes, marks, schoolUse, limits] = line.split('|') as Line;
  const confidence = marks.charAt(0) as Confidence;
  return {
    name,
    spellings: spellings.split(' '),
    names: names === '' ? [] : names.split(';'),
    soldPercent: /\d/.test(sold) ? Number(sold) : undefined,
    codes: codes
      .split(' ')
      .filter((pair) => pair !== '')
      .map((pair) => {
        const [code = '', own] = pair.split(':') as [string, Confidence | undefined];
        return { code, confidence: own ?? confidence };
      }),
    confidence,
    drain: drainOf(marks.slice(1)),
    schoolUse,
    limits: limits === '' ? [] : limits.split(';').map(limitOf),
  };
}

interface Listed {
  readonly name: string;
  readonly spellings: readonly string[];
  readonly names: readonly string[];
  /** Reads the whole line; most lookups want one of many. */
  readonly read: () => ListedHazards;
}

let list: readonly Listed[] | undefined;

/** Every listed substance by what it is called, read from the table on first use. */
export function listedSubstances(): readonly Listed[] {
  list ??= cautionList
    .trim()
    .split('\n')
    .map((line) => {
      // By index: taking a list apart for each of all lines costs a first answer more than the rest.
      const columns = line.split('|', 3);
      const names = columns[2] ?? '';
      let read: ListedHazards | undefined;
      return {
        name: columns[0] ?? '',
        spellings: columns[1]?.split(' ') ?? [],
        names: names === '' ? [] : names.split(';'),
        read: () => (read ??= substanceOf(line)),
      };
    });
  return list;
}

/** Every listed substance with all that is known of it. */
export const listedHazards = (): readonly ListedHazards[] => listedSubstances().map(({ read }) => read());
