import { expect, it } from 'vitest';
import { importedModules } from './bundle-dependencies.ts';

it('finds every way to import a module of the packages asked for, and nothing else', () => {
  const sources = [
    "import { Chart } from 'chart.js';\nimport type { Plan } from './plan.ts';",
    "const grid = await import('handsontable/base');\nimport 'handsontable/plugins';\nimport { html } from 'lit';",
    "export { Chart } from 'chart.js';\nimport x from '@scope/name/part';",
  ];
  const packages = new Set(['chart.js', 'handsontable', '@scope/name']);
  expect(importedModules(sources, packages)).toEqual([
    '@scope/name/part',
    'chart.js',
    'handsontable/base',
    'handsontable/plugins',
  ]);
});
