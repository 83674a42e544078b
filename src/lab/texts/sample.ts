/** Words of the invented school. Nobody of these names exists. */
export const sampleTexts = {
  school: 'Larkspur Hollow School (invented)',
  classes: [
    { name: 'Second period', teams: ['Basalt', 'Quartz', 'Granite', 'Slate', 'Marble', 'Pumice'] },
    { name: 'Fourth period', teams: ['Obsidian', 'Gneiss', 'Chalk', 'Flint', 'Jasper', 'Shale'] },
  ],
  members: [
    {
      className: 'Second period',
      team: 'Basalt',
      people: [
        { name: 'Ana', absent: false },
        { name: 'Ben', absent: false },
        { name: 'Cy', absent: true },
        { name: 'Dov', absent: false },
      ],
    },
    {
      className: 'Second period',
      team: 'Quartz',
      people: [
        { name: 'Eda', absent: false },
        { name: 'Finn', absent: false },
      ],
    },
  ],
  pollBefore: ['I mixed up millilitres and litres.', '', 'What is a mole again?'],
  poll: ['The ions do not go away!', '', 'Why is the water never measured?', 'More time for the balance.'],
  words: 'about half a mole?',
  told: 'The water spread the ions out, but none of them left the flask.',
} as const;
