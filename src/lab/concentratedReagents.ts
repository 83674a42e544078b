import { reagentList } from './reagentList.generated.ts';

interface ListedReagent {
  readonly formula: string;
  /** Diluted in schools by staff; the others have no place there. */
  readonly forStaff: boolean;
}

/** Acids and bases that are sold concentrated. */
export const concentratedReagents = (): readonly ListedReagent[] =>
  reagentList
    .trim()
    .split('\n')
    .map((line) => {
      const [formula = '', use = ''] = line.split('|');
      return { formula, forStaff: use !== 'not for students' };
    });
