import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { transformSync } from 'esbuild';
import { expect, it } from 'vitest';
import { withCompactStyles } from '../../.build/steps/compact-styles.ts';
import { compactStylesModule } from '../../.build/steps/compact-templates.ts';
import { filesUnder, projectRoot } from '../tools/source-files.ts';

it('styles lose their line breaks, and no space that means something', () => {
  const styles = `
    /* A comment. */
    :host :is(a, b) > p {
      width: calc(1rem + 2px);
      font:
        1rem / 1.2 serif;
    }
    @media (width < 40rem) {
      p::after {
        content: ' { ; , ';
      }
    }
  `;
  expect(withCompactStyles(styles)).toBe(
    " :host :is(a,b) > p{width:calc(1rem + 2px);font:1rem / 1.2 serif}@media (width < 40rem){p::after{content:' { ; , '}}",
  );
});

it('templates of styles are compact with a tag and without, and what is code is left as it is', () => {
  const module = `/** With \`signs\`. */
export const rules = (tone) => \`
td {
  color: \${tone === '}' ? \`a, b\` : tone};
}
\`;
export const styles = css\`p { margin: 0, 1px; }\`;
`;
  expect(compactStylesModule(module)).toBe(`/** With \`signs\`. */
export const rules = (tone) => \` td{color:\${tone === '}' ? \`a, b\` : tone}}\`;
export const styles = css\`p { margin: 0,1px; }\`;
`);
});

it('all styles of the kit keep every letter but for spaces, comments and last semicolons', () => {
  const bare = (module: string) =>
    transformSync(module, { loader: 'ts', minifyWhitespace: true })
      .code.replaceAll(/\/\*.*?\*\//gs, '')
      .replaceAll(/\s|\\n/g, '')
      .replaceAll(';}', '}');
  const styles = filesUnder('src', '.styles.ts').map((path) => readFileSync(join(projectRoot, path), 'utf8'));
  expect(styles.length).toBeGreaterThan(30);
  for (const module of styles) expect(bare(compactStylesModule(module))).toBe(bare(module));
});
