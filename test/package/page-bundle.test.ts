/** What a page loads with the one script: read off the bundler's own account of each file, not off a browser. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { elementNames } from '../../.build/steps/elements-manifest.ts';
import { bundlePage, PAGE_FOLDER } from '../../.build/steps/page-bundle.ts';
import { packagesIn, thirdPartyNotices } from '../../.build/steps/third-party-notices.ts';
import { ELEMENT_LOADERS } from '../../src/page/element-loaders.ts';
import { projectRoot } from '../tools/source-files.ts';

const { metafile, outputFiles, warnings } = await bundlePage();
const { outputs } = metafile;

const ENTRY = `${PAGE_FOLDER}/runnel.js`;

/** The file that is loaded for a module of src by its own dynamic import. */
function fileOf(module: string): string {
  const found = Object.entries(outputs).find(([, { entryPoint }]) => entryPoint === module);
  if (found === undefined) throw new Error(`no file of the bundle begins with ${module}`);
  return found[0];
}

/** A file and all that it needs before it runs. What is imported late is not among them. */
function needs(file: string, known = new Set<string>()): ReadonlySet<string> {
  if (known.has(file)) return known;
  known.add(file);
  for (const { path, kind } of outputs[file]?.imports ?? []) if (kind === 'import-statement') needs(path, known);
  return known;
}

/** The same with what it may import late. */
function mayLoad(file: string, known = new Set<string>()): ReadonlySet<string> {
  if (known.has(file)) return known;
  known.add(file);
  for (const { path } of outputs[file]?.imports ?? []) mayLoad(path, known);
  return known;
}

const packagesOf = (files: Iterable<string>): readonly string[] =>
  packagesIn([...files].flatMap((file) => Object.keys(outputs[file]?.inputs ?? {}))).map(({ name }) => name);

const definition = (name: string): string => fileOf(`src/elements/${name}/define.ts`);

describe('a page with the one script', () => {
  it('leaves out no definition that another one asks for', () => {
    expect(warnings.map(({ text }) => text)).toEqual([]);
    const planner = [...needs(definition('planner'))].flatMap((file) => Object.keys(outputs[file]?.inputs ?? {}));
    for (const name of ['chart', 'grid', 'notices', 'plan', 'trace']) {
      expect(planner).toContain(`src/elements/${name}/define.ts`);
    }
  });

  it('holds its own text in single bytes, for one wider character doubles what a browser keeps of a file', () => {
    const wide = outputFiles.filter(({ path, text }) => path.endsWith('.js') && /[^\0-\xff]/.test(text));
    const own = wide.filter(({ path }) => {
      const file = Object.keys(outputs).find((name) => path.endsWith(name)) ?? '';
      return Object.keys(outputs[file]?.inputs ?? {}).every((input) => input.startsWith('src/'));
    });
    expect(own.map(({ path, text }) => [path, text.match(/.{0,30}[^\0-\xff].{0,30}/)?.[0]])).toEqual([]);
  });

  it('can have every element', () => {
    expect([...ELEMENT_LOADERS.keys()].sort()).toEqual(elementNames().map((name) => `runnel-${name}`));
  });

  it('loads no element and no library before one is on the page, and less than 4 KB', () => {
    const files = needs(ENTRY);
    expect(packagesOf(files)).toEqual([]);
    const bytes = [...files].reduce((sum, file) => sum + (outputs[file]?.bytes ?? 0), 0);
    expect(bytes).toBeLessThan(4096);
  });

  it('never loads the grid or the chart for a plan with this week’s list', () => {
    const files = [...mayLoad(definition('week')), ...mayLoad(definition('plan'))];
    const packages = packagesOf(files);
    expect(packages).toContain('lit');
    expect(packages).not.toContain('handsontable');
    expect(packages).not.toContain('chart.js');
  });

  it('loads the grid and the chart late, each for its own element', () => {
    expect(packagesOf(needs(definition('grid')))).not.toContain('handsontable');
    expect(packagesOf(mayLoad(definition('grid')))).toContain('handsontable');
    expect(packagesOf(mayLoad(definition('grid')))).not.toContain('chart.js');
    expect(packagesOf(needs(definition('chart')))).not.toContain('chart.js');
    expect(packagesOf(mayLoad(definition('chart')))).toContain('chart.js');
    expect(packagesOf(mayLoad(definition('chart')))).not.toContain('handsontable');
  });

  it('loads what reads and writes tables when it is wanted, and for nothing but files of a season or of weather', () => {
    // The garden holds the weather, and the planner all of them.
    for (const name of ['files', 'garden', 'planner', 'weather']) {
      expect(packagesOf(needs(definition(name))), name).not.toContain('hucre');
      expect(packagesOf(mayLoad(definition(name))), name).toContain('hucre');
    }
    for (const name of ['chart', 'grid', 'mix', 'notices', 'plan', 'trace', 'week']) {
      expect(packagesOf(mayLoad(definition(name))), name).not.toContain('hucre');
    }
  });

  it('has files of no other origin', () => {
    const addresses = Object.values(outputs).flatMap(({ imports }) => imports.map(({ path }) => path));
    expect(addresses.filter((path) => !path.startsWith(`${PAGE_FOLDER}/`))).toEqual([]);
    expect(outputFiles.length).toBe(Object.keys(outputs).length);
  });
});

describe('the licences beside the bundle', () => {
  const packages = packagesIn(Object.keys(metafile.inputs));
  const notices = thirdPartyNotices(packages);

  it('cover each package in it, with its text', () => {
    expect(packages.map(({ name }) => name)).toEqual(expect.arrayContaining(['chart.js', 'handsontable', 'lit']));
    for (const { name, version, texts } of packages) {
      expect(texts.length, `${name} has no licence text`).toBeGreaterThan(0);
      expect(notices).toContain(`${name} ${version} (`);
      for (const text of texts) expect(notices).toContain(text);
    }
  });

  it('are permissive, except for the grid’s, which is said plainly', () => {
    const others = packages.filter(({ license }) => !['MIT', 'BSD-3-Clause', 'ISC', 'Apache-2.0'].includes(license));
    expect(others.map(({ name }) => name)).toEqual(['handsontable']);
    expect(notices).toContain('Handsontable, which is not under MIT and not free for every use');
    expect(notices).not.toMatch(/GNU (?:LESSER |AFFERO )?GENERAL PUBLIC LICENSE/i);
  });
});

it('the licence of the kit itself lies at the root', () => {
  expect(readFileSync(join(projectRoot, 'LICENSE'), 'utf8')).toContain('MIT License');
});
