/** Which hazards a person should read first where only a few fit: house choice. */
const gravest: readonly RegExp[] = [
  /^H3[013]0$/,
  /^H3[456]0/,
  /^H3[013]1$/,
  /^(H314|H318)$/,
  /^(H334|H370|H372)$/,
  /^(H341|H351|H361[a-z]*|H362)$/,
  /^H27[12]$/,
  /^H22[56]$/,
];
/** After everything else: harm to waters, then to metals. */
const last: readonly RegExp[] = [/^H4\d\d$/, /^H290$/];

/** The place of a code among others: the smaller, the sooner it is read. */
export function gravityOf(code: string): number {
  const place = gravest.findIndex((family) => family.test(code));
  if (place >= 0) return place;
  return gravest.length + 1 + last.findIndex((family) => family.test(code));
}
