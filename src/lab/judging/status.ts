/** What a check says of an entry, in the words of the contract. */
export type Status = 'on target' | 'close' | 'follows' | 'not yet' | 'blank' | 'unreadable';
