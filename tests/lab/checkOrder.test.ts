import { describe, expect, it } from 'vitest';
import { checkOrder } from '../../src/lab/checkOrder.ts';
import { orderedActions } from '../../src/lab/orderedActions.ts';
import type { OrderRule, Procedure } from '../../src/lab/procedures/procedure.ts';
import { allProcedures, procedureByName } from '../../src/lab/procedures.ts';

const isHard = ({ weight }: OrderRule) => weight !== 'advised';

/** Every order of the actions in which all hard rules hold. */
function* rightOrders({ actions, rules }: Procedure, done: readonly string[] = []): Generator<readonly string[]> {
  if (done.length === actions.length) yield done;
  for (const { id } of actions) {
    const isReady = rules.filter(isHard).every(({ before, after }) => after !== id || done.includes(before));
    if (!done.includes(id) && isReady) yield* rightOrders({ actions, rules } as Procedure, [...done, id]);
  }
}

const letterOf = (procedure: string, id: string): string => {
  const found = orderedActions(procedure).find(({ item }) => item.id === id);
  if (!found) throw new Error(`${procedure} has no action ${id}`);
  return found.letter;
};
const entryOf = (procedure: string, order: readonly string[]): string =>
  order.map((id) => letterOf(procedure, id)).join(' ');

describe('checkOrder', () => {
  it.each(allProcedures().map((procedure) => [procedure.name, procedure] as const))(
    'accepts every order of %s in which the hard rules hold',
    (name, procedure) => {
      let count = 0;
      for (const order of rightOrders(procedure)) {
        count += 1;
        const { status } = checkOrder(name, entryOf(name, order));
        if (status !== 'on target') expect.unreachable(`${order.join(', ')} is ${status}`);
      }
      // One order alone would be a list to learn by heart, not a procedure to think about.
      expect(count).toBeGreaterThan(1);
    },
  );

  const hardRules = allProcedures().flatMap((procedure) =>
    procedure.rules.filter(isHard).map((rule) => ({ procedure, rule, pair: `${rule.before} before ${rule.after}` })),
  );
  it.each(hardRules)('names the pair where only $procedure.name: $pair is turned round', ({ procedure, rule }) => {
    let tried = 0;
    for (const order of rightOrders(procedure)) {
      const at = order.indexOf(rule.before);
      if (order[at + 1] !== rule.after) continue;
      tried += 1;
      const turned = order.slice();
      turned.splice(at, 2, rule.after, rule.before);
      const { status, lookAt } = checkOrder(procedure.name, entryOf(procedure.name, turned));
      expect(status).toBe('not yet');
      const pair = `${letterOf(procedure.name, rule.after)} and ${letterOf(procedure.name, rule.before)}`;
      expect(lookAt).toBe(`Look at ${pair}. ${rule.ask}`);
      if (tried > 40) break;
    }
    expect(tried).toBeGreaterThan(0);
  });

  it.each([
    {
      name: 'solid to flask',
      variant: 'the solid tipped straight into the flask and dissolved there',
      order: ['weigh', 'transfer', 'rinse', 'dissolve', 'cool', 'near', 'mark', 'stopper', 'mix'],
      tip: false,
    },
    {
      name: 'solid to flask',
      variant: 'cooled in the flask, before the mark',
      order: ['weigh', 'dissolve', 'transfer', 'rinse', 'cool', 'near', 'mark', 'stopper', 'mix'],
      tip: true,
    },
    {
      name: 'solid to flask',
      variant: 'rinsed in after most of the water',
      order: ['weigh', 'dissolve', 'cool', 'transfer', 'near', 'rinse', 'mark', 'stopper', 'mix'],
      tip: true,
    },
    {
      name: 'pipette to flask',
      variant: 'some water in the flask before the stock',
      order: ['rinse flask', 'water', 'rinse pipette', 'deliver', 'mark', 'stopper', 'mix'],
      tip: false,
    },
    {
      name: 'pipette to flask',
      variant: 'the pipette rinsed before the flask',
      order: ['rinse pipette', 'rinse flask', 'deliver', 'water', 'mark', 'stopper', 'mix'],
      tip: false,
    },
  ])('accepts $variant', ({ name, order, tip }) => {
    const { status, lookAt } = checkOrder(name, entryOf(name, order));
    expect(status).toBe('on target');
    expect(lookAt.includes('A tip:')).toBe(tip);
  });

  it('stops acid before water, whatever else is out of order', () => {
    const name = 'concentrated acid';
    for (const order of rightOrders(procedureByName(name))) {
      const turned = order.filter((id) => id !== 'water');
      // Water last, and two more pairs broken before it in the entry.
      const { status, lookAt } = checkOrder(name, entryOf(name, [...turned.reverse(), 'water']));
      expect(status).toBe('not yet');
      expect(lookAt).toMatch(/Stop: /);
    }
    const acidFirst = ['protect', 'acid', 'water', 'stir', 'cool', 'transfer', 'mark', 'mix', 'label'];
    expect(checkOrder(name, entryOf(name, acidFirst)).lookAt).toContain('water goes in first');
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
    for (const spelling of spellings) expect(checkOrder(name, spelling).status, spelling).toBe('on target');
  });

  it('says what is missing, twice or not in the list', () => {
    expect(checkOrder('pipette to flask', 'a b b c e f z')).toEqual({
      status: 'unreadable',
      lookAt:
        'Write the letters a to g, each once, in the order you would work. Not in the list: z. Still missing: d, g. More than once: b.',
    });
    for (const entry of ['1 2 3', true, 12, new Date(), '—', 'don’t know']) {
      expect(checkOrder('pipette to flask', entry).status).toBe('unreadable');
    }
    expect(checkOrder('pipette to flask', ' ')).toEqual({ status: 'blank', lookAt: '' });
  });

  it('asks for letters where words were typed, and lists no stray letters', () => {
    const [, letters] = /such as ([a-z ]+)\./.exec(checkOrder('pipette to flask', 'rinse it').lookAt) ?? [];
    expect(letters).toBe('c a b');
    for (const { name } of allProcedures()) {
      for (const words of ['first weigh, then dissolve it', 'don’t know', 'acid into water']) {
        const { status, lookAt } = checkOrder(name, words);
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
        checkOrder(
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
      for (const { ask } of rules) expect(ask).not.toMatch(/\b[a-i]\b(?![’'])(?<!\ba)/);
      for (const hint of hints) expect(actions.filter(({ text }) => hint.includes(text))).toEqual([]);
    }
  });
});
