import { reagentList } from './reagentList.generated.ts';

interface ListedReagent {
  readonly name: string;
  readonly formula: string;
  readonly kind: 'acid' | 'base';
  /** Diluted in schools by staff; the others have no place there. */
  readonly forStaff: boolean;
}

/** Acids and bases that are sold concentrated. */
export const concentratedReagents = (): readonly ListedReagent[] =>
  reagentList
    .trim()
    .split('\n')
    .map((line) => {
      const [formula = '', use = '', name = '', kind = ''] = line.split('|');
      return { name, formula, kind: kind === 'acid' ? 'acid' : 'base', forStaff: use !== 'not for students' };
    });
