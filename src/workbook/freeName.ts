/** `wanted`, or with a number behind it, different from all in `taken` (the host does not tell case apart). */
export function freeName(wanted: string, taken: readonly string[]): string {
  const used = taken.map((name) => name.toLowerCase());
  if (!used.includes(wanted.toLowerCase())) return wanted;
  for (let number = 2; ; number += 1) {
    const name = `${wanted} ${number}`;
    if (!used.includes(name.toLowerCase())) return name;
  }
}
