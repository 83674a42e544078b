import type { Cautions } from '../../chemistry/cautions.ts';

/** What can kill, cause cancer or asthma, harm the unborn, or make other things explode is no work for a class (house choice). */
const grave = /^H(300|301|310|311|330|331|334|34\d.*|35\d.*|36\d.*|370|271)$/;
/** In a solution only what lasts or kills: the others are weakened with the strength and said by their signal word. */
const graveInSolution = /^H(300|310|330|34\d.*|35\d.*|36\d.*)$/;

/**
 * Whether staff alone should handle a substance in this form: its hazards are grave, or schools commonly keep it back.
 *
 * @param isSolution - A solution of known strength; else the substance as it is sold.
 */
export function keptFromStudents({ codes, statements }: Cautions, isSolution: boolean): boolean {
  const uses = statements.filter(({ about }) => about === 'use').map(({ text }) => text);
  if (codes.some((code) => (isSolution ? graveInSolution : grave).test(code))) return true;
  return uses.some((use) =>
    (isSolution
      ? /: not for students\.$/
      : /not for students|staff only|staff weigh it out|: solid: staff|staff weigh out(?! for younger)/
    ).test(use),
  );
}
