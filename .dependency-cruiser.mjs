// Which room may import which. Each room lists what it may reach; everything else in src is refused.
const rooms = {
  errors: [],
  measurement: ['errors'],
  chemistry: ['errors', 'measurement'],
  lab: ['errors', 'measurement', 'chemistry'],
  functions: ['errors', 'measurement', 'chemistry', 'lab'],
  workbook: ['errors', 'measurement', 'chemistry', 'lab', 'functions'],
  desk: ['errors', 'measurement', 'chemistry', 'lab', 'functions', 'workbook'],
  host: ['errors', 'measurement', 'chemistry', 'lab', 'functions', 'workbook'],
  sidebar: ['errors', 'measurement', 'chemistry', 'lab', 'functions', 'workbook', 'desk'],
  preview: [],
};

const arrows = Object.entries(rooms).map(([room, reach]) => ({
  name: `${room}-reaches-too-far`,
  comment: `${room} may import ${reach.length ? reach.join(', ') : 'nothing outside itself'}.`,
  severity: 'error',
  from: { path: `(^|/)src/${room}/` },
  to: {
    path: '(^|/)(src|tests|scripts)/',
    pathNot: [
      ...[room, ...reach].map((name) => `(^|/)src/${name}/`),
      // The desk and the page know the host's calls, by type only: what is asked and what is answered is plain data.
      ...(['desk', 'sidebar'].includes(room) ? ['(^|/)src/host/(calls|pages)\\.ts$'] : []),
      ...(room === 'preview' ? ['(^|/)src/host/calls\\.ts$'] : []),
    ],
  },
}));

/** @type {import('dependency-cruiser').IConfiguration} */
export default {
  forbidden: [
    ...arrows,
    {
      name: 'calls-by-type-only',
      comment: 'The script runs elsewhere: the desk and the page may not carry any of it.',
      severity: 'error',
      from: { path: '(^|/)src/(desk|sidebar)/' },
      to: { path: '(^|/)src/host/', dependencyTypesNot: ['type-only'] },
    },
    {
      name: 'thin-host',
      comment: 'The script brings sheets to plans that the page made; it neither plans nor works out a lesson.',
      severity: 'error',
      from: { path: '(^|/)src/host/' },
      to: { path: '(^|/)src/(desk|sidebar)/|(^|/)src/workbook/(plan|keptTeams|neutralLesson|classNow)' },
    },
    {
      name: 'no-cycles',
      comment:
        'The objects of the host lead to each other, a sheet to its ranges and a range to its sheet; so do these.',
      severity: 'error',
      from: { path: '(^|/)src/', pathNot: '(^|/)src/preview/standin/services/' },
      to: { circular: true, viaOnly: { dependencyTypesNot: ['type-only'] } },
    },
    {
      name: 'preview-knows-types-only',
      comment: 'The preview runs the script as it is built; of its sources it knows the types of the calls.',
      severity: 'error',
      from: { path: '(^|/)src/preview/' },
      to: { path: '(^|/)src/host/', dependencyTypesNot: ['type-only'] },
    },
    {
      name: 'preview-page-stands-apart',
      comment: 'The page runs in a browser: of the rest of the preview it knows what the two say to each other.',
      severity: 'error',
      from: { path: '(^|/)src/preview/page/' },
      to: { path: '(^|/)src/', pathNot: '(^|/)src/preview/(page/|[^/]+\\.ts$)' },
    },
    {
      name: 'core-without-packages',
      comment: 'What runs in cells carries big.js and nothing else; the page may also use mathjs.',
      severity: 'error',
      from: { path: '(^|/)src/(?!sidebar/|preview/(standin|server)/)' },
      to: { path: 'node_modules/', pathNot: 'node_modules/(@types/)?big\\.js/' },
    },
    {
      name: 'core-without-node',
      severity: 'error',
      from: { path: '(^|/)src/(?!preview/(standin|server)/)' },
      to: { dependencyTypes: ['core'] },
    },
  ],
  options: { tsPreCompilationDeps: true, doNotFollow: { path: 'node_modules' } },
};
