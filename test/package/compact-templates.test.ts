import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { transformSync } from 'esbuild';
import { expect, it } from 'vitest';
import { compactModule } from '../../.build/steps/compact-templates.ts';
import { filesUnder, projectRoot } from '../tools/source-files.ts';

it('templates lose their line breaks, and code and other texts keep theirs', () => {
  const module = `const list = html\`
    <ul class="a  b" role="list">
      \${rows.map(
        ({ name }) => html\`
          <li>\${name === '\`' ? other\`
            kept\` : "}"}</li>
        \`,
      )}
    </ul>\`;
const text = \`one
  two\`;`;
  expect(compactModule(module)).toBe(`const list = html\` <ul class="a  b" role=list> \${rows.map(
        ({ name }) => html\` <li>\${name === '\`' ? other\`
            kept\` : "}"}</li> \`,
      )} </ul>\`;
const text = \`one
  two\`;`);
});

it('all modules of the kit say the same, but for spaces, comments in styles, last semicolons and quotes', () => {
  const bare = (module: string) =>
    transformSync(module, { loader: 'ts', minifyWhitespace: true })
      .code.replaceAll(/\/\*.*?\*\//gs, '')
      .replaceAll(/\s|\\n|"/g, '')
      .replaceAll(';}', '}');
  const modules = filesUnder('src', '.ts').map((path) => readFileSync(join(projectRoot, path), 'utf8'));
  const changed = modules.filter((module) => compactModule(module) !== module);
  expect(changed.length).toBeGreaterThan(80);
  for (const module of changed) expect(bare(compactModule(module))).toBe(bare(module));
});
