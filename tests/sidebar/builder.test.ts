import { describe, expect, it } from 'vitest';
import type { Outcome } from '../../src/desk/outcome.ts';
import type { BuildState } from '../../src/desk/views.ts';
import { makeBuilder, percentDone } from '../../src/sidebar/plan/builder.ts';
import { bad, building, good } from './scenes.ts';

/** Answers in turn, and counts how often it was asked. */
function host(answers: readonly Outcome<BuildState>[]) {
  const left = [...answers];
  const state = {
    asked: 0,
    next: async () => {
      state.asked += 1;
      const answer = left.shift();
      if (!answer) throw new Error('asked more often than the test allows');
      return answer;
    },
  };
  return state;
}
const finishing = async () => {};

describe('makeBuilder', () => {
  it('builds sheet by sheet until the host says that it is finished', async () => {
    const { next } = host([good(building(2)), good(building(4)), good(building(5))]);
    const builder = makeBuilder({ next, finishing });
    const seen: string[] = [];
    builder.onChange(() => {
      const { now } = builder;
      seen.push(`${now.phase} ${'build' in now ? percentDone(now.build) : ''}`.trim());
    });
    expect(await builder.start(async () => good(building(1)))).toBeUndefined();
    expect(seen).toEqual(['running 0', 'running 20', 'running 40', 'running 80', 'finished 100']);
  });
  it('stops with the problem, keeps what is done, and goes on from there', async () => {
    const { next } = host([bad('busy'), good(building(5))]);
    const builder = makeBuilder({ next, finishing });
    await builder.start(async () => good(building(1)));
    expect(builder.now).toEqual({ phase: 'failed', build: building(1), problem: { message: 'busy' } });
    await builder.goOn();
    expect(builder.now).toEqual({ phase: 'finished', build: building(5) });
  });
  it('sends the plan again when the plan never arrived', async () => {
    const later = host([good(building(5))]);
    const builder = makeBuilder({ next: later.next, finishing });
    const first = host([bad('no answer'), good(building(1))]);
    await builder.start(first.next);
    expect(builder.now.phase).toBe('failed');
    await builder.goOn();
    expect([first.asked, later.asked, builder.now.phase]).toEqual([2, 1, 'finished']);
  });
  it('hands a problem with a field back to the plan', async () => {
    const builder = makeBuilder({ next: host([]).next, finishing });
    const problem = await builder.start(async () => bad('no such flask', 'givens.flask'));
    expect(problem).toEqual({ message: 'no such flask', field: 'givens.flask' });
    expect(builder.now.phase).toBe('idle');
  });
  it('rests after the sheet in hand when it is left, and can be taken up again', async () => {
    const { next } = host([good(building(2)), good(building(5))]);
    const builder = makeBuilder({ next, finishing });
    await builder.start(async () => {
      builder.leave();
      return good(building(1));
    });
    expect(builder.now).toEqual({ phase: 'left', build: building(1) });
    await builder.goOn();
    expect(builder.now.phase).toBe('finished');
  });
  it('takes up a build that the sheet tells of', async () => {
    const builder = makeBuilder({ next: host([good(building(5))]).next, finishing });
    builder.found(building(3));
    expect(builder.now).toEqual({ phase: 'left', build: building(3) });
    await builder.goOn();
    expect(builder.now.phase).toBe('finished');
  });
  it('stops when the host keeps answering the same', async () => {
    const stuck = host(Array.from({ length: 9 }, () => good(building(2))));
    const builder = makeBuilder({ next: stuck.next, finishing });
    await builder.start(async () => good(building(2)));
    expect(builder.now.phase).toBe('failed');
    expect(stuck.asked).toBe(3);
  });
  it('does not start twice', async () => {
    const builder = makeBuilder({ next: host([good(building(5))]).next, finishing });
    const second = host([good(building(1))]);
    await Promise.all([builder.start(async () => good(building(1))), builder.start(second.next)]);
    expect(second.asked).toBe(0);
  });
});
