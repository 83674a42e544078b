/** Words of the invented school. Nobody of these names exists. */
export const sampleTexts = {
  school: 'Larkspur Hollow School (invented)',
  classes: [
    { name: 'Second period', teams: ['Basalt', 'Quartz', 'Granite', 'Slate', 'Marble', 'Pumice'] },
    { name: 'Fourth period', teams: ['Obsidian', 'Gneiss', 'Chalk', 'Flint', 'Jasper', 'Shale'] },
  ],
  words: 'about half a mole?',
  told: 'The water spread the ions out, but none of them left the flask.',
} as const;
