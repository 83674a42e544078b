import type { EntryHelp, FunctionEntry, PublicFunction } from './entry.ts';

/** Arguments of which the entry itself does not say what they are. */
type Untold<Entry extends FunctionEntry> = Exclude<Entry['arguments'][number], { readonly about: string }>['name'];

/** A function with its help, and with what each of its arguments is. */
export function withHelp<Entry extends FunctionEntry>(
  entry: Entry,
  help: EntryHelp & { readonly about: Readonly<Record<Untold<Entry>, string>> },
): PublicFunction {
  const abouts: Readonly<Record<string, string>> = help.about;
  const told = entry.arguments.map((argument) => ({
    ...argument,
    about: argument.about ?? abouts[argument.name] ?? '',
  }));
  return { ...entry, ...help, arguments: told };
}
