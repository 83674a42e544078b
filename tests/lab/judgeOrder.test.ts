import { describe, expect, it } from 'vitest';
import { orderedActions } from '../../src/lab/bench/orderedActions.ts';
import type { OrderRule, Precaution, Procedure } from '../../src/lab/bench/procedures/procedure.ts';
import { allProcedures, procedureByName } from '../../src/lab/bench/procedures.ts';
import { judgeOrder } from '../../src/lab/judging/judgeOrdered.ts';
import type { Shown } from '../../src/lab/lesson/activity.ts';

/** Rules that a right order has to keep, for teams with this precaution or with none. */
const hardRules = ({ rules }: Procedure, precaution?: Precaution): readonly OrderRule[] =>
  rules.filter(({ weight, when }) => weight !== 'advised' && (when === undefined || when === precaution));

/** Each procedure for teams without a precaution, and for those with one that it knows of. */
const cases = allProcedures().flatMap((procedure) =>
  [undefined, ...new Set(procedure.rules.flatMap(({ when }) => when ?? []))].map((precaution) => ({
    name: procedure.name,
    procedure,
    precaution,
    precautions: precaution === undefined ? [] : [precaution],
  })),
);

/** Every order of the actions in which all hard rules hold. */
function* rightOrders(
  procedure: Procedure,
  precaution?: Precaution,
  done: readonly string[] = [],
): Generator<readonly string[]> {
  if (done.length === procedure.actions.length) yield done;
  for (const { id } of procedure.actions) {
    const isReady = hardRules(procedure, precaution).every(
      ({ before, after }) => after !== id || done.includes(before),
    );
    if (!done.includes(id) && isReady) yield* rightOrders(procedure, precaution, [...done, id]);
  }
}

const letterOf = (procedure: string, id: string): string => {
  const found = orderedActions(procedure).find(({ item }) => item.id === id);
  if (!found) throw new Error(`${procedure} has no action ${id}`);
  return found.letter;
};
const entryOf = (procedure: string, order: readonly string[]): string =>
  order.map((id) => letterOf(procedure, id)).join(' ');

const plain = (pieces: readonly Shown[]): string =>
  pieces.map((piece) => (typeof piece === 'string' ? piece : 'HCl')).join('');

describe('judgeOrder', () => {
  it.each(cases)(
    'accepts every order of $name in which the hard rules hold, with precaution: $precaution',
    ({ name, procedure, precaution, precautions }) => {
      let count = 0;
      for (const order of rightOrders(procedure, precaution)) {
        count += 1;
        const { status } = judgeOrder(name, entryOf(name, order), { precautions });
        if (status !== 'on target') expect.unreachable(`${order.join(', ')} is ${status}`);
      }
      // One order alone would be a list to learn by heart, not a procedure to think about.
      expect(count).toBeGreaterThan(1);
    },
  );

  const turnedRules = cases.flatMap(({ procedure, precaution, precautions }) =>
    // With a precaution, its own rules: some of the others follow from them then and cannot be broken alone.
    hardRules(procedure, precaution)
      .filter(({ when }) => when === precaution)
      .map((rule) => ({
        procedure,
        precaution,
        precautions,
        rule,
        pair: `${rule.before} before ${rule.after}`,
      })),
  );
  it.each(turnedRules)(
    'names the pair where only $procedure.name: $pair is turned round, with precaution: $precaution',
    ({ procedure, rule, precaution, precautions }) => {
      let tried = 0;
      for (const order of rightOrders(procedure, precaution)) {
        const at = order.indexOf(rule.before);
        const between = order.indexOf(rule.after) - at - 1;
        // What heats is followed by the waiting, so those two may change places with the vessel together.
        if (between > (rule.weight === 'safety' && rule.when !== undefined ? 1 : 0)) continue;
        tried += 1;
        const turned = order.filter((id) => id !== rule.after);
        turned.splice(at, 0, rule.after);
        const { status, lookAt } = judgeOrder(procedure.name, entryOf(procedure.name, turned), { precautions });
        expect(status).toBe('not yet');
        const pair = `${letterOf(procedure.name, rule.after)} and ${letterOf(procedure.name, rule.before)}`;
        expect(lookAt).toBe(`Look at ${pair}. ${rule.ask}`);
        if (tried > 40) break;
      }
      expect(tried).toBeGreaterThan(0);
    },
  );

  it.each([
    {
      name: 'solid to flask',
      variant: 'the solid brought straight into the flask and dissolved there',
      order: ['protect', 'weigh', 'transfer', 'rinse', 'dissolve', 'cool', 'near', 'mark', 'stopper', 'mix'],
      tip: false,
    },
    {
      name: 'solid to flask',
      variant: 'cooled in the flask, before the mark',
      order: ['protect', 'weigh', 'dissolve', 'transfer', 'rinse', 'cool', 'near', 'mark', 'stopper', 'mix'],
      tip: true,
    },
    {
      name: 'solid to flask',
      variant: 'rinsed in after most of the water',
      order: ['protect', 'weigh', 'dissolve', 'cool', 'transfer', 'near', 'rinse', 'mark', 'stopper', 'mix'],
      tip: true,
    },
    {
      name: 'pipette to flask',
      variant: 'some water in the flask before the stock',
      order: ['rinse flask', 'water', 'protect', 'rinse pipette', 'deliver', 'swirl', 'mark', 'stopper', 'mix'],
      tip: false,
    },
    {
      name: 'pipette to flask',
      variant: 'the stock in the flask before any water',
      order: ['protect', 'rinse pipette', 'rinse flask', 'deliver', 'water', 'swirl', 'mark', 'stopper', 'mix'],
      tip: false,
    },
    {
      name: 'pipette to flask',
      variant: 'swirled before the water came in',
      order: ['protect', 'rinse flask', 'rinse pipette', 'deliver', 'swirl', 'water', 'mark', 'stopper', 'mix'],
      tip: true,
    },
  ])('accepts $variant', ({ name, order, tip }) => {
    const { status, lookAt } = judgeOrder(name, entryOf(name, order));
    expect(status).toBe('on target');
    expect(lookAt.includes('A tip:')).toBe(tip);
  });

  it('stops the reagent before water, whatever else is out of order', () => {
    const name = 'concentrated to flask';
    for (const order of rightOrders(procedureByName(name))) {
      const turned = order.filter((id) => id !== 'water');
      // Water last, and more pairs broken before it in the entry.
      const { status, lookAt } = judgeOrder(name, entryOf(name, [...turned.reverse(), 'water']));
      expect(status).toBe('not yet');
      expect(lookAt).toMatch(/Stop: /);
    }
    const reagentFirst = ['protect', 'reagent', 'water', 'cool', 'transfer', 'mark', 'mix', 'label'];
    expect(judgeOrder(name, entryOf(name, reagentFirst)).lookAt).toContain('water goes in first');
  });

  it('reminds a team of its precaution where the order is right, and no other team', () => {
    const stock = entryOf('pipette to flask', [...procedureByName('pipette to flask').actions.map(({ id }) => id)]);
    expect(judgeOrder('pipette to flask', stock).lookAt).toBe('Yes, this order works.');
    expect(judgeOrder('pipette to flask', stock, { precautions: ['water first'] }).lookAt).toBe(
      'Yes, this order works. Let this stock run in slowly and swirl: it heats the water.',
    );
    const solid = entryOf('solid to flask', [...procedureByName('solid to flask').actions.map(({ id }) => id)]);
    expect(judgeOrder('solid to flask', solid, { precautions: ['dissolves hot'] }).lookAt).toContain(
      'heat-proof beaker',
    );
  });

  it('reads letters with any marks between them', () => {
    const name = 'pipette to flask';
    const letters = procedureByName(name).actions.map(({ id }) => letterOf(name, id));
    const spellings = [
      letters.join(''),
      letters.join(' ').toUpperCase(),
      letters.join(', '),
      letters.join(' → '),
      letters.join(' then '),
      letters.map((letter) => `(${letter})`).join(';\n'),
      letters.join('').replace(/./g, (letter) => String.fromCodePoint(letter.charCodeAt(0) + 0xfee0)),
    ];
    for (const spelling of spellings) expect(judgeOrder(name, spelling).status, spelling).toBe('on target');
  });

  it('says what is missing, twice or not in the list', () => {
    expect(judgeOrder('pipette to flask', 'a b b c e f g i z')).toEqual({
      status: 'unreadable',
      lookAt:
        'Write the letters a to i, each once, in the order you would do them. Not in the list: z. Still missing: d, h. More than once: b.',
    });
    for (const entry of ['1 2 3', true, 12, new Date(), '—', 'don’t know']) {
      expect(judgeOrder('pipette to flask', entry).status).toBe('unreadable');
    }
    expect(judgeOrder('pipette to flask', ' ')).toEqual({ status: 'blank', lookAt: '' });
  });

  it('asks for letters where words were typed, and lists no stray letters', () => {
    const [, letters] = /such as ([a-z ]+)\./.exec(judgeOrder('pipette to flask', 'rinse it').lookAt) ?? [];
    expect(letters).toBe('c a b');
    for (const { name } of allProcedures()) {
      for (const words of ['first weigh, then dissolve it', 'don’t know', 'acid into water']) {
        const { status, lookAt } = judgeOrder(name, words);
        expect(status).toBe('unreadable');
        expect(lookAt).toMatch(/^Letters only, such as c a b\. Write the letters a to/);
        expect(lookAt).not.toContain('Not in the list');
      }
    }
  });

  it('letters the actions in one mixed order that is wrong as it stands', () => {
    for (const { name, actions } of allProcedures()) {
      expect(orderedActions(name)).toEqual(orderedActions(name));
      expect(orderedActions(name).map(({ item }) => item.id)).not.toEqual(actions.map(({ id }) => id));
      expect(
        judgeOrder(
          name,
          orderedActions(name)
            .map(({ letter }) => letter)
            .join(' '),
        ).status,
      ).toBe('not yet');
    }
  });

  it('never shows more than one pair', () => {
    for (const { rules, hints, actions } of allProcedures()) {
      for (const { ask } of rules) expect(ask).not.toMatch(/\b[a-j]\b(?![’'])(?<!\ba)/);
      for (const hint of hints) expect(actions.filter(({ text }) => hint.includes(plain(text)))).toEqual([]);
    }
  });
});
