import type { Guide } from './guide.ts';

export const studentGuide: Guide = {
  title: 'For students',
  about: 'Half a page to hand out or to project.',
  parts: [
    {
      title: 'How it works',
      steps: [
        'Open the link or scan its picture. Your team’s name at the top of your class’s sheet takes you to your rows.',
        'Read the cautions together, then choose the answer that names your substance. Bench rows wait for that.',
        'Type each result under “Your entry” and press Enter, with or without a unit, with a point or a comma.',
        'Read the check and the sentence beside it. “Follows” means: right, but look at the row it names first.',
        'Stuck? Type 1, 2 or 3 under “Help”: the idea, the relation, or the set-up with your numbers. Or ask another team what it did, and why.',
        'Take turns; under “Who” you can say whose turn it is.',
        '“Exit question”: a row for each of you, at the end. “Kept” means that its check comes later.',
      ],
    },
    {
      title: 'Good to know',
      lines: [
        'Every team has its own numbers, so compare how you did it, not what came out. If a line above your rows says that your numbers changed, read them again.',
        'Wrong is fine: try again as often as you like. Nothing is marked. “Next time” means: go on there then.',
        'Keep spare digits while you work, and round at the end as the row asks.',
        'At the bench, your teacher and the safety data sheet come first, whatever a cell says.',
      ],
    },
  ],
};
