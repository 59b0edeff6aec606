import astro from 'eslint-plugin-astro'
import tseslint from 'typescript-eslint'

const size = {
  'max-lines': ['error', { max: 250, skipBlankLines: true, skipComments: true }],
  'max-lines-per-function': ['error', { max: 60, skipBlankLines: true, skipComments: true }],
}

export default tseslint.config(
  { ignores: ['dist/**', 'node_modules/**', '.astro/**', '.cache/**', 'reports/**', '.stryker-tmp/**', '**/.stryker-tmp/**'] },
  ...tseslint.configs.recommended,
  ...astro.configs.recommended,
  {
    files: ['src/**/*.ts', 'components/**/*.{ts,tsx}', 'tests/**/*.ts'],
    rules: {
      '@typescript-eslint/consistent-type-imports': 'error',
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_' }],
      '@typescript-eslint/no-non-null-assertion': 'off',
      '@typescript-eslint/no-explicit-any': 'error',
      'no-console': 'off',
      eqeqeq: ['error', 'always', { null: 'ignore' }],
    },
  },
  { files: ['src/**/*.ts', 'components/**/*.{ts,tsx}'], rules: size },
  // tables of numbers and prose data are as long as their source
  { files: ['src/core/viscosityIndexTable.ts', 'src/content.config.ts'], rules: { 'max-lines': 'off' } },
)
