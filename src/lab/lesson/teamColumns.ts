import { exitMolarity, exitVolume } from '../exit/exitStep.ts';

/** Columns of the Plan behind the one about today: what one team has of its own besides its numbers. */
export const ownHelpGiven = 'highest help level';
export const extensionGiven = 'extension';
/** `yes` where a class may see the checks of its exit questions. */
export const showExitGiven = 'show exit checks';

/** Those of a lesson with exit questions for so many seats, in their order. */
export const teamColumns = (seats: number): readonly string[] => [
  ownHelpGiven,
  extensionGiven,
  ...(seats > 0 ? [showExitGiven] : []),
  ...Array.from({ length: seats }, (_, place) => [exitMolarity(place + 1), exitVolume(place + 1)]).flat(),
];
