// `npm run build`: makes dist/ afresh, one step after the other. The first step that fails ends it.
import { rmSync } from 'node:fs';
import { compileModules } from './steps/compile-modules.ts';
import { writeEditorFiles } from './steps/editor-data.ts';
import { writePageBundle } from './steps/page-bundle.ts';
import { writeLinesToPaste } from './steps/readme-paste.ts';

const steps: readonly { readonly name: string; readonly run: () => void | Promise<void> }[] = [
  { name: 'ES modules and declarations', run: () => compileModules() },
  { name: 'editor data, reference pages and the elements of README.md', run: writeEditorFiles },
  {
    name: 'the page bundle and the lines to paste of README.md',
    run: async () => writeLinesToPaste(await writePageBundle()),
  },
];

rmSync('dist', { recursive: true, force: true });
try {
  for (const { name, run } of steps) {
    const start = performance.now();
    await run();
    console.log(`${name}: ${((performance.now() - start) / 1000).toFixed(1)} s`);
  }
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}
