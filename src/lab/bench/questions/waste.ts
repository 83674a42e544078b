import type { SafetyQuestion } from './safetyQuestion.ts';

/** Where leftovers and rinsings go; see `drainAdvice`. Local rules decide. */
export const waste: SafetyQuestion<'drain' | 'waste beaker' | 'metal' | 'bottle'> = {
  name: 'waste',
  stem: ['Where do leftovers and rinsings of ', { given: 'formula' }, ' go?'],
  options: [
    {
      id: 'drain',
      text: 'waste beaker, then drain with water',
      right: 'Yes, where your local rules allow it. Your teacher has the last word.',
      ask: 'From the drain nobody gets it back. What does the caution row say about leftovers?',
    },
    {
      id: 'waste beaker',
      text: 'waste beaker, never the drain',
      right: 'Yes, rinsings too. Staff deal with it by local rules.',
      ask: 'Read what the caution row says about leftovers once more. Is that all of it?',
    },
    {
      id: 'metal',
      text: 'beaker for its metal, never the drain',
      right: 'Yes, rinsings too: it is collected for that metal. Staff deal with it by local rules.',
      ask: 'Which metal would that be? Look for its name in the caution row.',
    },
    {
      id: 'bottle',
      text: 'back into the bottle they came from',
      ask: 'What would then be in the bottle, beside what its label says? Look at the caution row.',
    },
  ],
};
