import type { Calls } from '../../host/calls.ts';

type CallName = keyof Calls;
type WishOf<Name extends CallName> = Parameters<Calls[Name]> extends [number, infer Wish] ? Wish : undefined;

/** A call to the script as a value: whoever runs the work makes it, and hands the answer back. */
export type Asked = { [Name in CallName]: { readonly call: Name; readonly wish: WishOf<Name> } }[CallName];

/**
 * Work on a file that has to ask the script in between. It is written as if answers came at once; a page runs it with
 * promises, a test straight on.
 */
export type Work<T> = Generator<Asked, T, unknown>;

export function* ask<Name extends CallName>(call: Name, wish: WishOf<Name>): Work<ReturnType<Calls[Name]>> {
  return (yield { call, wish } as Asked) as ReturnType<Calls[Name]>;
}
