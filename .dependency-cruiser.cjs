/** The order of the rooms of core. A room may import those before it; rooms of one line do not know each other. */
const order = [
  ['words'],
  ['units'],
  ['geometry'],
  ['sources'],
  ['air', 'kinds'],
  ['materials'],
  ['practice'],
  ['seals'],
  ['detail'],
  ['section'],
  ['heat', 'movement', 'load'],
  ['vapour'],
  ['rules'],
  ['propose', 'study', 'work'],
  ['drawing'],
  ['export'],
  ['intake'],
]

/** What each room of the app may import of its neighbours. All of them may import core. */
const neighbours = {
  editor: [],
  host: ['bridge'],
  bridge: [],
  window: ['editor', 'host'],
  main: ['bridge', 'disk', 'start'],
  preload: ['bridge'],
  cli: ['disk'],
  disk: [],
  start: [],
}

/** Libraries that core may use: pure ones, that touch neither screen nor file. */
const libraries = [
  'zod',
  'clipper2-ts',
  'mutative',
  'delaunator',
  '@kninnug/constrainautor',
  'robust-predicates',
  '@noble/hashes',
  'fontkit',
  'pdfkit',
  'fflate',
]

const any = names => names.map(it => it.replace('/', '\\/')).join('|')

const roomOrder = order.flatMap((line, at) =>
  line.map(room => {
    const allowed = [room, ...order.slice(0, at).flat()]
    return {
      name: `core-${room}-looks-left-only`,
      comment: `core/${room} may import ${allowed.join(', ')}`,
      severity: 'error',
      from: { path: `^core/${room}/` },
      to: { path: '^core/', pathNot: `^core/(${any(allowed)})/` },
    }
  }),
)

const appRooms = Object.entries(neighbours).map(([room, may]) => ({
  name: `app-${room}-knows-its-neighbours-only`,
  comment: `app/${room} may import ${['core', ...may].join(', ')}`,
  severity: 'error',
  from: { path: `^app/${room}/` },
  to: { path: '^app/', pathNot: `^app/(${any([room, ...may])})/` },
}))

/** @type {import('dependency-cruiser').IConfiguration} */
module.exports = {
  forbidden: [
    ...roomOrder,
    ...appRooms,
    {
      name: 'every-room-has-its-place',
      comment: 'a new room of core is put into the order in this file',
      severity: 'error',
      from: { path: '^core/', pathNot: `^core/(${any(order.flat())})/` },
      to: {},
    },
    {
      name: 'other-rooms-by-their-door',
      comment: 'import another room of core from its index.ts',
      severity: 'error',
      from: { path: '^core/([^/]+)/' },
      to: { path: '^core/', pathNot: ['^core/$1/', '^core/[^/]+/index\\.ts$'] },
    },
    {
      name: 'core-by-its-doors',
      comment: 'the app imports rooms of core from their index.ts',
      severity: 'error',
      from: { path: '^app/' },
      to: { path: '^core/', pathNot: '^core/[^/]+/index\\.ts$' },
    },
    {
      name: 'app-rooms-by-their-door',
      comment: 'import another room of the app from its index.ts',
      severity: 'error',
      from: { path: '^app/([^/]+)/' },
      to: { path: '^app/', pathNot: ['^app/$1/', '^app/[^/]+/index\\.ts$', '^app/start/'] },
    },
    {
      name: 'not-by-the-own-door',
      comment: 'files of one room import each other directly',
      severity: 'error',
      from: { path: '^(core|app)/([^/]+)/' },
      to: { path: '^$1/$2/index\\.ts$' },
    },
    {
      name: 'no-circle',
      comment: 'covers members of an all.ts that import it',
      severity: 'error',
      from: {},
      to: { circular: true },
    },
    {
      name: 'core-is-pure',
      comment: 'core imports no app, no test, nothing of Node, and only the libraries listed in this file',
      severity: 'error',
      from: { path: '^core/' },
      to: { pathNot: ['^core/', `^node_modules/(${any(libraries)})/`] },
    },
    {
      name: 'nothing-imports-tests',
      severity: 'error',
      from: { path: '^(core|app)/' },
      to: { path: '^tests/' },
    },
    {
      name: 'all-can-be-found',
      severity: 'error',
      from: {},
      to: { couldNotResolve: true, pathNot: '\\?(worker|url|raw|inline)' },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '^(out|tests/golden)/' },
    tsPreCompilationDeps: true,
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'svelte', 'browser', 'default', 'types'],
      extensions: ['.ts', '.svelte', '.mjs', '.js', '.d.ts', '.json'],
    },
  },
}
