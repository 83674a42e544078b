/** A name without what makes no other name of it: case and spaces. */
export const plainName = (name: string): string => name.toLowerCase().replace(/\s+/g, '');
