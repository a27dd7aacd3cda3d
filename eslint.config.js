import { defineConfig } from 'eslint/config';
import typescript from 'typescript-eslint';

/** Folders of the pure core: no files, no clock, no chance, no console. */
const core = [
  'geometry',
  'spec',
  'vessel',
  'capacity',
  'rack',
  'drawing',
  'pieces',
  'sheets',
  'writers',
  'figures',
  'proof',
].map((folder) => `src/${folder}/**`);

const outsideWorld = ['console', 'process', 'performance', 'setTimeout', 'fetch'].map((name) => ({
  name,
  message: 'The core is pure: input and output belong to src/cli.',
}));

export default defineConfig(
  { ignores: ['dist/', 'node_modules/', 'my-cask/', 'out-samples/', '**/*.generated.ts'] },
  {
    files: ['**/*.{ts,tsx}'],
    extends: [typescript.configs.strict, typescript.configs.stylistic],
    rules: {
      eqeqeq: 'error',
      'no-template-curly-in-string': 'error',
      'object-shorthand': 'error',
      '@typescript-eslint/consistent-type-imports': [
        'error',
        { fixStyle: 'inline-type-imports', disallowTypeAnnotations: false },
      ],
      '@typescript-eslint/no-unused-vars': [
        'error',
        { argsIgnorePattern: '^_', varsIgnorePattern: '^_', caughtErrors: 'all' },
      ],
      // an index within bounds is not known to the compiler; `!` says that the writer knows it
      '@typescript-eslint/no-non-null-assertion': 'off',
      '@typescript-eslint/no-empty-function': 'off',
      '@typescript-eslint/no-dynamic-delete': 'off',
      '@typescript-eslint/prefer-for-of': 'off',
      // a type literal has its place as well, such as in a union
      '@typescript-eslint/consistent-type-definitions': 'off',
    },
  },
  {
    // these ask the compiler for types, which takes most of the time
    files: ['src/**/*.{ts,tsx}', 'scripts/**/*.ts', 'benchmarks/**/*.ts'],
    languageOptions: {
      parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname },
    },
    rules: {
      '@typescript-eslint/await-thenable': 'error',
      '@typescript-eslint/no-floating-promises': 'error',
      '@typescript-eslint/no-misused-promises': 'error',
      '@typescript-eslint/only-throw-error': 'error',
      '@typescript-eslint/switch-exhaustiveness-check': [
        'error',
        { considerDefaultExhaustiveForUnions: true },
      ],
    },
  },
  {
    files: core,
    rules: {
      'no-restricted-globals': ['error', ...outsideWorld],
      'no-restricted-imports': [
        'error',
        { patterns: [{ group: ['node:*', 'fs', 'path'], message: 'The core is pure.' }] },
      ],
      'no-restricted-properties': [
        'error',
        { object: 'Math', property: 'random', message: 'Chance is seeded: src/rack/random.ts.' },
        { object: 'Date', property: 'now', message: 'The core has no clock.' },
      ],
      'no-restricted-syntax': [
        'error',
        {
          selector: 'NewExpression[callee.name="Date"][arguments.length=0]',
          message: 'The core has no clock.',
        },
      ],
    },
  },
);
