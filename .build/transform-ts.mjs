import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { transform } from 'esbuild';

// Only the options that change what a module does; types are checked elsewhere.
const tsconfigRaw = {
  compilerOptions: { experimentalDecorators: true, useDefineForClassFields: false, verbatimModuleSyntax: true },
};

/** @type {import('node:module').LoadHook} */
export async function load(url, context, nextLoad) {
  if (!url.startsWith('file:') || !new URL(url).pathname.endsWith('.ts')) return nextLoad(url, context);
  const sourcefile = fileURLToPath(url);
  const { code } = await transform(await readFile(sourcefile, 'utf8'), {
    loader: 'ts',
    format: 'esm',
    target: 'node20',
    sourcemap: 'inline',
    sourcefile,
    tsconfigRaw,
  });
  return { format: 'module', source: code, shortCircuit: true };
}
