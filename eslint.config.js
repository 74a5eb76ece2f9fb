/**
 * Fence 4 of the house (the others: .dependency-cruiser.cjs, the test of it, tsconfig.pure.json, and the frozen inputs of
 * the engine's own tests): what imports and types cannot show. tests/architecture/lintFences.test.ts shows each part failing.
 */
import { defineConfig } from 'eslint/config';
import reactHooks from 'eslint-plugin-react-hooks';
import tseslint from 'typescript-eslint';

const PURE = ['base', 'engine', 'document', 'starter', 'menu', 'quiz', 'scene', 'report'].map(
  (folder) => `src/${folder}/**/*.ts`,
);

const TIME = 'Time comes in as an argument; a pure folder gives the same answer every time it is asked.';
const WAIT = 'Nothing waits in a pure folder: take a budget as an argument, and let app or store do the scheduling.';
const BROWSER = 'There is no browser here: take what you need as an argument, and let editor, store or app read it.';
const KEEP = 'Keeping things is the business of store and app: return a value, and let them keep it.';
const LOCALE = "The same input must read the same on every machine: compare and word with base's functions.";

/** Globals that would make an answer depend on where or when it was asked. A local variable of the same name is lawful. */
const BANNED_GLOBALS = Object.entries({
  window: BROWSER,
  document: BROWSER,
  navigator: BROWSER,
  self: BROWSER,
  globalThis: BROWSER,
  location: BROWSER,
  localStorage: KEEP,
  sessionStorage: KEEP,
  indexedDB: KEEP,
  setTimeout: WAIT,
  setInterval: WAIT,
  setImmediate: WAIT,
  queueMicrotask: WAIT,
  requestAnimationFrame: WAIT,
  performance: TIME,
  Date: TIME,
  crypto: 'Chance and new ids come in as arguments, so that a test can give the same ones twice.',
  console: 'Return what you found, as a Result or a finding; only cli and app speak to people.',
  process: 'Take settings as arguments; only cli and scripts may ask the process.',
  fetch: 'Nothing is fetched: Gapwright sends nothing anywhere. Take the data as an argument.',
  XMLHttpRequest: 'Nothing is fetched: Gapwright sends nothing anywhere. Take the data as an argument.',
  Intl: LOCALE,
}).map(([name, message]) => ({ name, message }));

const RANDOM = [
  {
    object: 'Math',
    property: 'random',
    message: 'Chance comes in as an argument (a seeded generator), so that a test can give the same twice.',
  },
];

/** Wrong everywhere in this project. */
const NOWHERE = [
  {
    selector: ':matches(NewExpression, CallExpression)[callee.name=/^(Function|eval)$/]',
    message: 'Text never becomes code: write the function down, or look it up in a table. A file is data.',
  },
  {
    selector:
      ':matches(ImportDeclaration, ExportNamedDeclaration, ExportAllDeclaration, ImportExpression)[source.value=/^[.]{1,2}\\u002F(.*\\u002F)?[^.\\u002F]*$/]',
    message: "Write the whole file name, './name.ts': every tool here then finds the same file.",
  },
  {
    selector: 'TSEnumDeclaration',
    message: 'Use a list with `as const` and the union of its members.',
  },
];

const NOT_IN_PURE = [
  ...NOWHERE,
  {
    selector: 'CallExpression[callee.property.name=/^(localeCompare|toLocale[A-Z]\\w*)$/]',
    message: LOCALE,
  },
  {
    selector: 'ImportExpression',
    message: 'A pure folder loads nothing while it runs: import it at the top.',
  },
];

const sizes = (lines, functionLines) => ({
  'max-lines': ['error', { max: lines, skipBlankLines: true, skipComments: true }],
  'max-lines-per-function': ['error', { max: functionLines, skipBlankLines: true, skipComments: true }],
});

export default defineConfig(
  { ignores: ['dist/', 'coverage/', '.cache/', '.stryker-tmp/', 'test-results/', 'playwright-report/'] },
  { linterOptions: { reportUnusedDisableDirectives: 'error' } },
  tseslint.configs.strictTypeChecked,
  {
    languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname } },
    rules: {
      eqeqeq: 'error',
      'no-restricted-syntax': ['error', ...NOWHERE],
      'no-warning-comments': ['error', { terms: ['todo', 'fixme'] }],
      '@typescript-eslint/consistent-type-imports': ['error', { fixStyle: 'inline-type-imports' }],
      '@typescript-eslint/switch-exhaustiveness-check': ['error', { considerDefaultExhaustiveForUnions: true }],
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_' }],
      // Numbers read well inside a sentence, and `x => setX(1)` is ordinary React.
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
      '@typescript-eslint/no-confusing-void-expression': ['error', { ignoreArrowShorthand: true }],
    },
  },
  {
    files: ['src/**/*.{ts,tsx}'],
    rules: {
      ...sizes(400, 120),
      // A cast that narrows silences the compiler; test the value instead.
      '@typescript-eslint/no-unsafe-type-assertion': 'error',
    },
  },
  {
    files: PURE,
    rules: {
      ...sizes(300, 60),
      'no-restricted-globals': ['error', ...BANNED_GLOBALS],
      'no-restricted-properties': ['error', ...RANDOM],
      'no-restricted-syntax': ['error', ...NOT_IN_PURE],
      // `as const` stays lawful under "never".
      '@typescript-eslint/consistent-type-assertions': ['error', { assertionStyle: 'never' }],
    },
  },
  {
    // The one place where a plain number or string becomes a branded one, which only a cast can say.
    files: ['src/base/brand.ts'],
    rules: {
      '@typescript-eslint/consistent-type-assertions': 'off',
      '@typescript-eslint/no-unsafe-type-assertion': 'off',
    },
  },
  {
    files: ['src/{app,editor}/**/*.{ts,tsx}'],
    ...reactHooks.configs.flat.recommended,
  },
  {
    files: ['src/{app,editor}/**/*.{ts,tsx}'],
    // It warns of what React's compiler would skip; there is none here.
    rules: { 'react-hooks/incompatible-library': 'off' },
  },
  {
    files: ['scripts/**/*.mjs'],
    rules: {
      // JSDoc has no way to write `import type`.
      '@typescript-eslint/consistent-type-imports': 'off',
    },
  },
  {
    // The tools' own configuration is plain JavaScript that no TypeScript project lists.
    files: ['*.js', '*.cjs'],
    ...tseslint.configs.disableTypeChecked,
  },
);
