/** The package as somebody who installed it finds it: compiled afresh, and addressed by its own name. */
import { spawnSync } from 'node:child_process';
import { copyFileSync, existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { compileModules } from '../../.build/steps/compile-modules.ts';
import { filesUnder, projectRoot } from '../tools/source-files.ts';

interface Manifest {
  readonly name: string;
  readonly exports: Readonly<Record<string, string | { readonly types: string; readonly default: string }>>;
  readonly sideEffects: readonly string[];
  readonly files: readonly string[];
}

const manifest: Manifest = JSON.parse(readFileSync(join(projectRoot, 'package.json'), 'utf8'));
// Below node_modules, so that the libraries that it stands on are found from there.
const place = join(projectRoot, `node_modules/.cache/package-under-test-${process.pid}`);

const elements = readdirSync(join(projectRoot, 'src/elements')).filter((name) => name !== 'shared');

/** Every path of the package as a user would write it, stars filled in; the page bundle has a test of its own. */
const paths = Object.keys(manifest.exports)
  .filter((path) => !path.startsWith('./page'))
  .flatMap((path) => (path.includes('*') ? elements.map((name) => path.replace('*', name)) : [path]))
  .map((path) => path.replace(/^\./, manifest.name));
const modules = paths.filter((path) => !path.endsWith('.json'));

/** Runs a program inside the package, in a Node of its own. */
function run(program: string): { readonly status: number | null; readonly said: string } {
  writeFileSync(join(place, 'program.mjs'), program);
  const { status, stdout, stderr } = spawnSync(process.execPath, ['program.mjs'], { cwd: place, encoding: 'utf8' });
  return { status, said: stdout + stderr };
}

beforeAll(() => {
  mkdirSync(join(place, 'web-types'), { recursive: true });
  copyFileSync(join(projectRoot, 'package.json'), join(place, 'package.json'));
  for (const file of readdirSync(join(projectRoot, 'web-types'))) {
    copyFileSync(join(projectRoot, 'web-types', file), join(place, 'web-types', file));
  }
  compileModules(join(place, 'dist'));
}, 300_000);

afterAll(() => rmSync(place, { recursive: true, force: true }));

describe('the package', () => {
  it('has an entry for everything, each element, the engine, the plan and the sheet', () => {
    for (const name of elements) {
      expect(modules).toContain(`${manifest.name}/elements/${name}`);
      expect(modules).toContain(`${manifest.name}/elements/${name}/define`);
    }
    for (const entry of ['', '/engine', '/plan', '/sheet']) expect(modules).toContain(manifest.name + entry);
  });

  it('has a file behind every path', () => {
    const { said } = run(
      `for (const path of ${JSON.stringify(paths)}) console.log(new URL(import.meta.resolve(path)).pathname);`,
    );
    const found = said.trim().split('\n');
    expect(found).toHaveLength(paths.length);
    expect(found.filter((file) => !existsSync(file))).toEqual([]);
  });

  it('has declarations beside every module', () => {
    const missing = Object.values(manifest.exports)
      .filter((target) => typeof target === 'object')
      .flatMap(({ types }) => (types.includes('*') ? elements.map((name) => types.replaceAll('*', name)) : [types]))
      .filter((file) => !existsSync(join(place, file)));
    expect(missing).toEqual([]);
  });

  it('imports by each path and module by module in plain Node, without a window', () => {
    const all = filesUnder('src', '.ts').map((path) => path.replace(/^src\//, './dist/').replace(/\.ts$/, '.js'));
    const { status, said } = run(`
      if (globalThis.window !== undefined) throw new Error('this is a page');
      const failed = [];
      for (const path of ${JSON.stringify([...modules, ...all])}) {
        try { await import(path); } catch (error) { failed.push(path + ': ' + error.message); }
      }
      console.log(JSON.stringify(failed));
    `);
    expect(said.trim()).toBe('[]');
    expect(status).toBe(0);
  }, 120_000);

  it('computes a season from a plan file as README.md shows', () => {
    copyFileSync(join(projectRoot, 'demo/plans/lantern-lane.runnel.json'), join(place, 'our-garden.runnel.json'));
    const readme = readFileSync(join(projectRoot, 'README.md'), 'utf8');
    const example = [...readme.matchAll(/^```js\n(.*?)^```/gms)].map((match) => match[1] ?? '').at(-1) ?? '';
    expect(example).toContain('runSeason(gardenOf(read.plan))');
    // Worked by hand in test/demo/lantern-lane.test.ts: the shrub bank's week of 12 July.
    const worked = "zoneWeek(season.zones.find(({ zone }) => zone.id === 'shrub-bank'), 14)";
    expect(run(example).said).toMatch(/^\d+ min, \d+\.\d gal\n$/);
    expect(run(example.replace('zoneWeek(season.zones[0], 2)', worked)).said).toBe('20 min, 16.8 gal\n');
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
