import type { Question } from './question.ts';

/** Dilution keeps the amount of solute; particles neither multiply, vanish nor fade. */
export const dilutionParticles = (): Question => ({
  name: 'dilution particles',
  stem: [
    'A portion of stock becomes ',
    { given: 'target volume' },
    ' mL of solution. Is there as much ',
    { given: 'formula' },
    ' as before?',
  ],
  right: {
    id: 'spread out',
    text: ['just as much, more spread out'],
    reply: 'Yes: the water spreads the particles out. None are made or lost, so each mL holds fewer of them.',
  },
  others: [
    {
      id: 'amount falls',
      text: ['less, as the molarity went down'],
      reply: 'Molarity says how crowded the particles are. If none left the flask, where could the others have gone?',
    },
    {
      id: 'amount grows',
      text: ['more, as there is more solution'],
      reply: 'The volume grew because of water. Does water bring any of the solute with it?',
    },
    {
      id: 'same molarity',
      text: ['just as much, also in each mL'],
      reply: 'Picture one mL before and one mL after. Would you count the same number in both?',
    },
    {
      id: 'weaker particles',
      text: ['as many particles, each weaker'],
      reply: 'Can water change one particle, or only how far apart they are?',
    },
  ],
  hints: [
    'Keep two things apart: how much there is, and how crowded it is.',
    'amount = molarity × volume. If one of the two goes down and the other up, what does the amount do?',
    [
      'Before: ',
      { given: 'stock molarity' },
      ' mol/L in your portion. After: ',
      { given: 'target molarity' },
      ' mol/L in ',
      { given: 'target volume' },
      ' mL. Picture every particle of the portion, then pour in the water.',
    ],
  ],
});
