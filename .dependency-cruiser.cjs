/**
 * Who may import whom, and why. `npm run structure` checks src against it; tests/architecture shows each rule failing.
 *
 * The table below is the source: a folder imports only the folders its row lists (all of them stand above it), only through
 * their index.ts, and only the packages its row lists. There is no list of known violations, and there should be none.
 */

/** @type {ReadonlyArray<{ folder: string, folders: string[], packages: string[], data?: string[], node?: boolean, why: string }>} */
const ROWS = [
  {
    folder: 'base',
    folders: [],
    packages: [],
    why: 'base is what every folder stands on; it exists so that no folder invents its own Result.',
  },
  {
    folder: 'engine',
    folders: ['base'],
    packages: [],
    why: 'What is true of football must run in a test, a worker and a terminal alike, and outlive every library.',
  },
  {
    folder: 'document',
    folders: ['base', 'engine'],
    packages: ['zod'],
    why: 'The shape of files changes on its own clock; it translates to the engine, which must not feel a migration.',
  },
  {
    folder: 'starter',
    folders: ['base', 'engine', 'document'],
    packages: [],
    why: 'What a playbook is written with, for the demo and for a coach who starts his own: data, which knows no screen.',
  },
  {
    folder: 'menu',
    folders: ['base', 'engine', 'document'],
    packages: [],
    why: 'All calls in all looks are judged in a worker and in a terminal; it keeps verdicts and leaves words to the report.',
  },
  {
    folder: 'quiz',
    folders: ['base', 'engine', 'document'],
    packages: [],
    why: 'What is asked and what is right follows from the engine alone; a screen only shows it.',
  },
  {
    folder: 'scene',
    folders: ['base', 'engine', 'document'],
    packages: [],
    why: 'One picture, in yards, for screen and paper; it knows neither, so the two cannot drift apart.',
  },
  {
    folder: 'report',
    folders: ['base', 'engine'],
    packages: [],
    why: 'A report reads results and never computes them, so it cannot disagree with the board.',
  },
  {
    folder: 'print',
    folders: ['base', 'engine', 'scene', 'report'],
    packages: ['pdfkit'],
    why: 'The only folder that knows points, fonts and page breaks; the PDF library can be swapped here and nowhere else.',
  },
  {
    folder: 'store',
    folders: ['base', 'engine', 'document'],
    packages: ['zustand', 'zundo'],
    why: 'Commands are pure functions on the document; undo must be testable without React.',
  },
  {
    folder: 'editor',
    folders: ['base', 'engine', 'document', 'scene', 'store'],
    packages: ['react', 'react-dom', 'konva', 'react-konva'],
    why: 'Only here do pixels and pointers exist; tools decide, layers draw.',
  },
  {
    folder: 'app',
    folders: ['base', 'engine', 'document', 'starter', 'menu', 'quiz', 'scene', 'report', 'print', 'store', 'editor'],
    packages: [
      'react',
      'react-dom',
      'zustand',
      'idb',
      '@tanstack/react-virtual',
      'react-aria-components',
      'tinykeys',
      '@fontsource/[^/]+',
    ],
    // The demo playbook, which a new user starts from.
    data: ['demo-data'],
    why: 'The place where everything is wired together. Nothing imports it, and it stays off the headless check.',
  },
  {
    folder: 'cli',
    folders: ['base', 'engine', 'document', 'menu', 'scene', 'report', 'print'],
    packages: ['csv-stringify'],
    node: true,
    why: 'Proves every day that the core runs without a browser; the only folder of src that may read files.',
  },
];

const ANY_FOLDER = ROWS.map((row) => row.folder).join('|');

/** Where a program starts: nothing has to import these. A worker is started by its address, which is not an import. */
const ENTRY = '^src/(app/main[.]tsx|cli/main[.]ts|.+[wW]orker[.]ts)$';

/** Types of a package may come from the package or from @types. */
const packagePath = (name) => `(^|/)node_modules/(@types/)?${name}/`;

const rowRules = ROWS.map(({ folder, folders, packages, data = [], why }) => ({
  name: `${folder}-imports-only-what-its-row-lists`,
  comment: `${why} Allowed here: ${[...folders, ...packages, ...data].join(', ') || 'nothing'}.`,
  severity: 'error',
  from: { path: `^src/${folder}/` },
  to: {
    pathNot: [
      ...[folder, ...folders].map((name) => `^src/${name}/`),
      ...packages.map(packagePath),
      ...data.map((name) => `^${name}/`),
    ],
    // Node's own modules and imports of nothing have rules of their own below, so that one mistake gets one name.
    dependencyTypesNot: ['core'],
    couldNotResolve: false,
  },
}));

/** @type {import('dependency-cruiser').IConfiguration} */
module.exports = {
  forbidden: [
    ...rowRules,
    {
      name: 'every-folder-has-a-row',
      comment: 'A new folder of src gets a row in this table first: what it may import, and why.',
      severity: 'error',
      from: { path: '^src/', pathNot: `^src/(${ANY_FOLDER})/` },
      to: {},
    },
    {
      name: 'node-only-in-cli',
      comment: "Only the headless check may use Node's own modules; everything else must also run in a browser.",
      severity: 'error',
      from: { path: '^src/', pathNot: ROWS.filter((row) => row.node).map((row) => `^src/${row.folder}/`) },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'one-door-per-folder',
      comment:
        "Other folders come in through index.ts, so that a folder's inside can be rearranged without asking anyone.",
      severity: 'error',
      from: { path: '^src/([^/]+)/' },
      to: { path: '^src/[^/]+/', pathNot: ['^src/$1/', '^src/[^/]+/index[.]ts$'] },
    },
    {
      name: 'editor-tools-stay-pure',
      comment:
        'A tool is a function from state and event to state and commands; it draws nothing and can be tested alone.',
      severity: 'error',
      from: { path: '^src/editor/tools/' },
      to: { path: ['konva', 'react', 'react-dom', 'react-konva'].map(packagePath) },
    },
    {
      name: 'store-does-without-react',
      comment: "Take zustand/vanilla and zustand/middleware here: zustand's main door brings React along.",
      severity: 'error',
      from: { path: '^src/store/' },
      to: { path: packagePath('zustand'), pathNot: `${packagePath('zustand')}(esm/)?(vanilla|middleware)` },
    },
    {
      name: 'no-cycles',
      comment: 'Two files that need each other are one file, or three.',
      severity: 'error',
      from: { path: '^src/' },
      to: { circular: true },
    },
    {
      name: 'no-orphans',
      comment: 'Nothing imports this file and it imports nothing: it is dead, or it is missing from its index.ts.',
      severity: 'error',
      from: { orphan: true, path: '^src/', pathNot: [ENTRY, '[.]d[.]ts$'] },
      to: {},
    },
    {
      name: 'no-unused-files',
      comment: 'Neither the app nor the headless check reaches this file. What only a test needs lives in tests.',
      severity: 'error',
      from: { path: ENTRY },
      to: { reachable: false, path: '^src/', pathNot: [ENTRY, '[.]d[.]ts$'] },
    },
    {
      name: 'no-unresolvable-imports',
      comment: 'The import leads to no file and no installed package.',
      severity: 'error',
      from: {},
      to: { couldNotResolve: true },
    },
  ],
  options: {
    doNotFollow: { path: '(^|/)node_modules/' },
    // An import of a type ties two folders together as firmly as any other.
    tsPreCompilationDeps: true,
    combinedDependencies: false,
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'types', 'default'],
      mainFields: ['module', 'main', 'types'],
      extensions: ['.ts', '.tsx', '.js', '.mjs', '.cjs', '.d.ts'],
    },
  },
};
