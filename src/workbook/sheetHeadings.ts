/** Titles and headings by which a sheet of ours is known, apart from all other words: the script reads them at every build. */
export const sheetHeadings = {
  plan: { setting: 'setting', value: 'value', key: 'key', className: 'class', team: 'team' },
  progress: { title: 'Progress', now: 'Now', done: 'Done', count: 'Steps' },
  help: {
    title: 'Help, in your own words',
    step: 'step',
    level: 'level',
    wording: 'your own wording',
    link: 'link',
  },
  prepare: {
    title: 'Prepare',
    headings: ['For', 'What', 'Needed', 'With spare', 'Unit', 'How and what to know'],
    mark: 'prepare',
  },
} as const;
