/** The letter of the place in a list: 0 is a, 25 is z. */
export const letterOf = (place: number): string => String.fromCharCode(97 + place);
