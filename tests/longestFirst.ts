import { statSync } from 'node:fs';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** Rooms whose tests take longest, the longest first: pages in a browser, and the script in a workbook. */
const slow = [/\/tests\/journey\//, /\.browser\.test\.ts$/, /\/tests\/(host|preview)\/|selfCheck/];
const rank = ({ moduleId }: TestSpecification): number => {
  const index = slow.findIndex((one) => one.test(moduleId));
  return index === -1 ? slow.length : index;
};
const size = ({ moduleId }: TestSpecification): number => statSync(moduleId).size;

/** Workers take one file after another: with the short ones last, none of them is left alone with a long one at the end. */
export class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    return [...files].sort((one, other) => rank(one) - rank(other) || size(other) - size(one));
  }
}
