/** The package in a project of Vite and TypeScript that takes single elements and the calculation. */
import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { build } from 'vite';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  type ElementDeclaration,
  elementNames,
  elementsManifest,
  elementsOf,
  eventDeclarations,
} from '../../.build/steps/elements-manifest.ts';
import { type Ended, type InstalledProject, installedProject } from '../tools/installed-project.ts';
import { filesUnder, projectRoot } from '../tools/source-files.ts';
import { JSX_USES, TINY_JSX, TYPED_USES } from './typed-uses.ts';

const TSC = join(projectRoot, 'node_modules/typescript/bin/tsc');
const OPTIONS = {
  target: 'ES2022',
  lib: ['ES2022', 'DOM', 'DOM.Iterable'],
  module: 'ESNext',
  moduleResolution: 'Bundler',
  types: [],
  strict: true,
  exactOptionalPropertyTypes: true,
  noUncheckedIndexedAccess: true,
  // Once with the declarations themselves checked, below; each time would take a minute.
  skipLibCheck: true,
  noEmit: true,
};

const config = (files: readonly string[], options: object = {}): string =>
  JSON.stringify({ compilerOptions: { ...OPTIONS, ...options }, files });

const MAIN = `
import 'runnel-kit/elements/plan/define';
import 'runnel-kit/elements/notices/define';
import { RunnelWeek } from 'runnel-kit/elements/week/define';
import { fromSi } from 'runnel-kit/plan';

const week = document.querySelector('runnel-week');
if (!(week instanceof RunnelWeek)) throw new Error('no week');
week.addEventListener('runnel-edit', ({ edit }) => console.log(edit.type));
document.title = \`\${fromSi(1000, 'volume', 'us').toFixed(0)} gal\`;
`;

const elements = elementsOf(await elementsManifest());
const events = await eventDeclarations();
let project: InstalledProject;

const check = (name: string): Promise<Ended> => project.run(process.execPath, [TSC, '-p', name]);

beforeAll(async () => {
  project = await installedProject({
    'tsconfig.json': config(['src/main.ts']),
    'index.html':
      '<!doctype html><runnel-plan><runnel-week></runnel-week></runnel-plan><script type="module" src="/src/main.ts"></script>',
    'src/main.ts': MAIN,
  });
}, 300_000);

afterAll(() => project?.remove(), 60_000);

describe('a project of Vite and TypeScript', () => {
  it('type-checks', async () => {
    expect(await check('tsconfig.json')).toEqual({ status: 0, said: '' });
  }, 60_000);

  it('builds, with the elements that it imports and without the spreadsheet, the chart and other elements', async () => {
    await build({ root: project.folder, configFile: false, logLevel: 'error' });
    const folder = join(project.folder, 'dist/assets');
    const files = readdirSync(folder);
    const built = files.map((file) => readFileSync(join(folder, file), 'utf8')).join('\n');
    const defined = elementNames().filter(
      (name) => built.includes(`runnel-${name}\``) || built.includes(`"runnel-${name}"`),
    );
    expect(defined).toEqual(expect.arrayContaining(['plan', 'week']));
    expect(defined).not.toContain('grid');
    expect(built.length).toBeGreaterThan(10_000);
    expect(built).not.toMatch(/handsontable|chartjs/);
    // What a worker runs, with all that it needs.
    const worker = files.filter((file) => file.startsWith('season-worker'));
    expect(worker).toHaveLength(1);
    expect(built).toContain(worker[0]);
    expect(readFileSync(join(folder, worker[0] ?? ''), 'utf8')).not.toMatch(/\bimport\b/);
  }, 120_000);
});

/** What shows that an element and its events are typed where nothing else of the kit is imported. */
function useOf({ name, tagName, events: own = [] }: ElementDeclaration, path: string): string {
  const heard = own.map((event) => {
    const { members = [] } = events.get(event.type?.text ?? '') ?? {};
    const fields = members.filter((each) => each.kind === 'field' && each.static !== true).map((each) => each.name);
    expect(fields.length, event.name).toBeGreaterThan(0);
    const on = (target: string, listener: string) => `${target}.addEventListener('${event.name}', ${listener});\n`;
    const right = `({ ${fields.join(', ')} }) => console.log(${fields.join(', ')})`;
    const wrong = '// @ts-expect-error no event of the kit is one of the mouse\n';
    const mouse = on('element', '(event: MouseEvent) => console.log(event.button)');
    return on('element', right) + on('document', right) + on('window', right) + wrong + mouse;
  });
  return `import '${path}';
const element = document.createElement('${tagName}');
const own: import('${path}').${name} = element;
// @ts-expect-error that is another element
const another: import('${path}').${name} = document.createElement('p');
void [own, another];
${heard.join('')}`;
}

describe('the types of the package', () => {
  it('know every element by its name, with each of its events, where it alone is imported', async () => {
    // The definition gives out the class by way of the class's own module, so this holds for that one too.
    const files = elements.map((element) => {
      const folder = element.tagName.replace('runnel-', '');
      return [`types/${folder}.ts`, useOf(element, `runnel-kit/elements/${folder}/define`)] as const;
    });
    project.write(Object.fromEntries(files));
    project.write(Object.fromEntries(files.map(([path]) => [`${path}.json`, config([basename(path)])])));
    const { status, said } = await project.run(process.execPath, [
      TSC,
      '--build',
      ...files.map(([path]) => `${path}.json`),
    ]);
    expect({ status, said }).toEqual({ status: 0, said: '' });
    expect(files.length).toBe(elementNames().length);
  }, 120_000);

  it('take right uses and refuse wrong ones, in TypeScript and in JSX merged as README.md shows', async () => {
    const readme = readFileSync(join(projectRoot, 'README.md'), 'utf8');
    const [merging = '', language = ''] = [...readme.matchAll(/^```ts\n(.*?)^```/gms)].map((match) => match[1] ?? '');
    expect(merging).toContain("declare module 'react'");
    expect(language).toContain('satisfies Words');
    const jsx = { jsx: 'react-jsx', jsxImportSource: 'tiny-jsx' };
    project.write({
      ...TINY_JSX,
      'uses/merged.ts': merging.replaceAll("'react'", "'tiny-jsx'"),
      'uses/spanish.ts': language,
      'uses/uses.ts': TYPED_USES,
      'uses/jsx.tsx': JSX_USES,
      'uses/tsconfig.json': config(['merged.ts', 'spanish.ts', 'uses.ts', 'jsx.tsx'], { ...jsx, skipLibCheck: false }),
    });
    expect(await check('uses/tsconfig.json')).toEqual({ status: 0, said: '' });
  }, 60_000);

  it('compile the examples of the reference pages', async () => {
    const pages = filesUnder('web-types/elements', '.md');
    const examples = pages.map(
      (path) => readFileSync(join(projectRoot, path), 'utf8').match(/^```js\n(.*?)^```/ms)?.[1] ?? '',
    );
    const files = Object.fromEntries(examples.map((text, at) => [`pages/example-${at}.ts`, text]));
    project.write({ ...files, 'pages.json': config(Object.keys(files)) });
    expect(await check('pages.json')).toEqual({ status: 0, said: '' });
    expect(examples.filter((text) => text.includes('addEventListener')).length).toBeGreaterThan(5);
  }, 60_000);
});
