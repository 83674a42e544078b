/** What is known by the name of a given, by a recipe's own name for it; what is not known is absent. */
export function byOwnName<Value>(
  takes: Readonly<Record<string, string>>,
  known: Readonly<Record<string, Value>>,
): Readonly<Record<string, Value>> {
  const own: Record<string, Value> = {};
  for (const [name, given] of Object.entries(takes)) {
    const value = known[given];
    if (value !== undefined) own[name] = value;
  }
  return own;
}
