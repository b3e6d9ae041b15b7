/** The package as somebody who installed it finds it: packed afresh, and addressed by its own name. */
import { spawnSync } from 'node:child_process';
import { copyFileSync, existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { elementNames } from '../../.build/steps/elements-manifest.ts';
import { exportPaths, readPackageManifest } from '../tools/package-exports.ts';
import { type PackedPackage, packedPackage } from '../tools/packed-package.ts';
import { filesUnder, projectRoot } from '../tools/source-files.ts';

const manifest = readPackageManifest();
const elements = elementNames();

/** What the page's script loads late. */
const LATE_PART = /\/page\/[A-Z0-9]{8}\.js$/;

let packed: PackedPackage;
let place: string;

/** Runs a program inside the package, in a Node of its own. */
function run(program: string): { readonly status: number | null; readonly said: string } {
  writeFileSync(join(place, 'program.mjs'), program);
  const { status, stdout, stderr } = spawnSync(process.execPath, ['program.mjs'], { cwd: place, encoding: 'utf8' });
  return { status, said: stdout + stderr };
}

beforeAll(async () => {
  packed = await packedPackage();
  place = join(packed.folder, `program-of-${process.pid}`);
  mkdirSync(place);
}, 300_000);

afterAll(() => rmSync(place, { recursive: true, force: true }));

describe('the package', () => {
  it('has an entry for everything, each element, each floor that others use, and the page', () => {
    const modules = exportPaths(packed.files).map(({ name }) => name);
    for (const name of elements) {
      expect(modules).toContain(`${manifest.name}/elements/${name}`);
      expect(modules).toContain(`${manifest.name}/elements/${name}/define`);
    }
    for (const entry of [
      ...['', '/engine', '/plan', '/explain', '/remedies', '/language', '/exchange', '/sheet', '/page'],
      ...['/jsx', '/custom-elements.json'],
    ]) {
      expect(modules).toContain(manifest.name + entry);
    }
  });

  it('has a packed file behind every path, and behind every path’s types', () => {
    const targets = exportPaths(packed.files).flatMap(({ module, types }) => [module, types]);
    const missing = targets.filter((file) => file !== undefined && !packed.files.includes(file));
    expect(targets.length).toBeGreaterThan(4 * elements.length);
    expect(missing).toEqual([]);
  });

  it('has every path found by Node', () => {
    const names = exportPaths(packed.files).flatMap(({ name, module }) => (module === undefined ? [] : [name]));
    const { said } = run(
      `for (const name of ${JSON.stringify(names)}) console.log(new URL(import.meta.resolve(name)).pathname);`,
    );
    const found = said.trim().split('\n');
    expect(found).toHaveLength(names.length);
    expect(found.filter((file) => !existsSync(file))).toEqual([]);
  });

  it('has declarations beside every module', () => {
    const untyped = exportPaths(packed.files).filter(
      ({ module, types }) => module?.endsWith('.js') && !LATE_PART.test(module) && types === undefined,
    );
    // Files that a page loads; the script has its declaration under its own name.
    const ofPage = ['runnel', 'season-worker'].map((file) => `${manifest.name}/page/${file}.js`);
    expect(untyped.map(({ name }) => name)).toEqual(ofPage);
    const modules = packed.files.filter((file) => /^dist\/(?!page\/).*\.js$/.test(file));
    expect(modules.filter((file) => !packed.files.includes(file.replace(/\.js$/, '.d.ts')))).toEqual([]);
  });

  it('holds a module for each of the sources', () => {
    const sources = filesUnder('src', '.ts').filter((path) => !path.startsWith('src/page/'));
    const modules = sources.map((path) => path.replace(/^src\//, 'dist/').replace(/\.ts$/, '.js'));
    expect(modules.filter((file) => !packed.files.includes(file))).toEqual([]);
  });

  it('imports by each path and module by module in plain Node, without a window', () => {
    // Late parts are made for a page and for nothing else.
    const names = exportPaths(packed.files).flatMap(({ name, module }) =>
      module?.endsWith('.js') && !LATE_PART.test(name) ? [name] : [],
    );
    const every = packed.files.filter((file) => /^dist\/(?!page\/).*\.js$/.test(file));
    expect(every.length).toBeGreaterThan(300);
    const { status, said } = run(`
      if (globalThis.window !== undefined) throw new Error('this is a page');
      const failed = [];
      for (const path of ${JSON.stringify([...names, ...every.map((file) => `../${file}`)])}) {
        try { await import(path); } catch (error) { failed.push(path + ': ' + error.message); }
      }
      console.log(JSON.stringify(failed));
    `);
    expect(said.trim()).toBe('[]');
    expect(status).toBe(0);
  }, 120_000);

  it('computes a season from a plan file, and says how, as README.md shows', () => {
    copyFileSync(join(projectRoot, 'demo/plans/lantern-lane.runnel.json'), join(place, 'our-garden.runnel.json'));
    const readme = readFileSync(join(projectRoot, 'README.md'), 'utf8');
    const [example = '', why = ''] = [...readme.matchAll(/^```js\n(.*?)^```/gms)]
      .map((match) => match[1] ?? '')
      .slice(-2);
    expect(example).toContain('runSeason(gardenOf(read.plan))');
    // Worked by hand in test/demo/lantern-lane.test.ts: the shrub bank's week of 12 July.
    const worked = "zoneWeek(season.zones.find(({ zone }) => zone.id === 'shrub-bank'), 14)";
    expect(run(example).said).toMatch(/^\d+ min, \d+\.\d gal\n$/);
    expect(run(example.replace('zoneWeek(season.zones[0], 2)', worked)).said).toBe('20 min, 19.2 gal\n');
    expect(why).toContain('describeStep(step, reader)');
    expect(run(example + why).said).toMatch(/\nMinutes of the week: \d+\sminutes\n/);
  });

  it('imports as README.md shows', () => {
    const readme = readFileSync(join(projectRoot, 'README.md'), 'utf8');
    const example = readme.match(/^```js\n(.*?)^```/ms)?.[1] ?? '';
    expect(example).toContain("import 'runnel-kit'");
    expect(run(example)).toEqual({ status: 0, said: '' });
  });

  it('keeps what a module does when it is loaded, if a bundler drops what is not used', () => {
    const forEffect = filesUnder('src', '.ts').filter((path) =>
      /^(?:define|registerPlugin|registerSeason)\(/m.test(readFileSync(join(projectRoot, path), 'utf8')),
    );
    const kept = manifest.sideEffects.map((pattern) => new RegExp(`^${pattern.replaceAll('*', '[^/]+')}$`));
    const lost = forEffect
      .map((path) => path.replace(/^src\//, './dist/').replace(/\.ts$/, '.js'))
      .filter((path) => !kept.some((pattern) => pattern.test(path)));
    expect(forEffect.length).toBeGreaterThan(elements.length);
    expect(lost).toEqual([]);
  });
});
