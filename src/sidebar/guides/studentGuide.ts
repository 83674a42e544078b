import type { Guide } from './guide.ts';

export const studentGuide: Guide = {
  title: 'For students',
  about: 'Half a page to hand out or to project.',
  parts: [
    {
      title: 'How it works',
      steps: [
        'Open the link, or scan its picture, and find your team’s name at the top of your class’s sheet. It takes you to your rows.',
        'Read the cautions together, then choose the answer that names your substance. Your rows at the bench wait for that.',
        'Work out a row, type the result under “Your entry” and press Enter. With or without a unit, with a point or a comma: both are read.',
        'Read the check and the sentence beside it. “Follows” means: right, but look at the row it names first.',
        'Stuck? Type 1, 2 or 3 under “Help”: the idea, the relation, or the set-up with your numbers. Or ask another team what it did, and why.',
        'Under “Who”, write who is doing the row, if you like. Take turns.',
      ],
    },
    {
      title: 'Good to know',
      lines: [
        'Your numbers belong to your team. Other teams have others, so compare how you did it and not what came out.',
        'Wrong is fine: try again as often as you like. Nothing is marked. “Next time” means: go on there then.',
        'Keep spare digits while you work and round at the end, to the figures that the row asks for.',
        'At the bench, your teacher and the safety data sheet come first, whatever a cell says.',
      ],
    },
  ],
};
