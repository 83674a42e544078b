// Which room may import which. Each room lists what it may reach; everything else in src is refused.
const rooms = {
  errors: [],
  measurement: ['errors'],
  chemistry: ['errors', 'measurement'],
  lab: ['errors', 'measurement', 'chemistry'],
  functions: ['errors', 'measurement', 'chemistry', 'lab'],
  workbook: ['errors', 'measurement', 'chemistry', 'lab', 'functions'],
  host: ['errors', 'measurement', 'chemistry', 'lab', 'functions', 'workbook'],
  sidebar: ['errors', 'measurement', 'chemistry', 'lab'],
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
      // The page knows the host's calls by type only; the workbook's planned formulas name catalogue entries.
      ...(room === 'sidebar' ? ['(^|/)src/host/(calls|pages)\\.ts$'] : []),
    ],
  },
}));

/** @type {import('dependency-cruiser').IConfiguration} */
export default {
  forbidden: [
    ...arrows,
    {
      name: 'no-cycles',
      severity: 'error',
      from: { path: '(^|/)src/' },
      to: { circular: true, viaOnly: { dependencyTypesNot: ['type-only'] } },
    },
    {
      name: 'core-without-packages',
      comment: 'What runs in cells carries big.js and nothing else; the page may also use mathjs.',
      severity: 'error',
      from: { path: '(^|/)src/(?!sidebar/)' },
      to: { path: 'node_modules/', pathNot: 'node_modules/(@types/)?big\\.js/' },
    },
    {
      name: 'core-without-node',
      severity: 'error',
      from: { path: '(^|/)src/' },
      to: { dependencyTypes: ['core'] },
    },
  ],
  options: { tsPreCompilationDeps: true, doNotFollow: { path: 'node_modules' } },
};
