/** What lies in the tarball: maps that lead to sources, licences beside the bundle, and a README that tells of that bundle. */
import { createHash } from 'node:crypto';
import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join, posix } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { bundlePage } from '../../.build/steps/page-bundle.ts';
import { linesToPaste, withLinesToPaste } from '../../.build/steps/readme-paste.ts';
import { readPackageManifest } from '../tools/package-exports.ts';
import { type PackedPackage, packedPackage } from '../tools/packed-package.ts';
import { projectRoot } from '../tools/source-files.ts';

const manifest = readPackageManifest();

let packed: PackedPackage;

const read = (path: string): string => readFileSync(join(packed.folder, path), 'utf8');

beforeAll(async () => {
  packed = await packedPackage();
}, 300_000);

describe('the tarball', () => {
  it('holds nothing but what was built, its sources, the editors’ data, and what one reads first', () => {
    const others = packed.files.filter((file) => !/^(?:dist|src|web-types)\//.test(file));
    expect(others).toEqual(['LICENSE', 'README.md', 'package.json']);
  });

  it('has a source behind every source map, of modules and of declarations', () => {
    const maps = packed.files.filter((file) => file.endsWith('.map'));
    const lost = maps.flatMap((file) => {
      const { sources }: { readonly sources: readonly string[] } = JSON.parse(read(file));
      return sources
        .map((source) => posix.join(posix.dirname(file), source))
        .filter((path) => !packed.files.includes(path));
    });
    expect(maps.filter((file) => file.endsWith('.js.map')).length).toBeGreaterThan(300);
    expect(maps.filter((file) => file.endsWith('.d.ts.map')).length).toBeGreaterThan(300);
    expect(lost).toEqual([]);
  });

  it('names no map that is not there', () => {
    const named = packed.files
      .filter((file) => /\.(?:js|d\.ts)$/.test(file) && !file.startsWith('src/'))
      .flatMap((file) => {
        const map = read(file).match(/^\/\/# sourceMappingURL=(\S+)$/m)?.[1];
        return map === undefined ? [] : [posix.join(posix.dirname(file), map)];
      });
    expect(named.length).toBeGreaterThan(600);
    expect(named.filter((file) => !packed.files.includes(file))).toEqual([]);
  });

  it('has the kit’s licence at its root, and beside the bundle that and all others, the grid’s not as MIT', () => {
    expect(packed.files).toEqual(expect.arrayContaining(['LICENSE', 'dist/page/LICENSE', 'dist/page/LICENSES.txt']));
    expect(read('dist/page/LICENSE')).toBe(read('LICENSE'));
    const notices = read('dist/page/LICENSES.txt');
    expect(notices).toContain('Its spreadsheet is Handsontable, which is not under MIT');
    const carried = Object.keys(manifest.dependencies).filter((name) =>
      notices.includes(`\n${name} ${manifest.dependencies[name]} (`),
    );
    expect(carried).toEqual(expect.arrayContaining(['chart.js', 'handsontable', 'lit', 'valibot']));
    expect(notices).toMatch(/^handsontable [\d.]+ \((?!MIT)/m);
  });
});

describe('the lines to paste', () => {
  it('state in the package’s README.md the hash of the script beside it', () => {
    const script = readFileSync(join(packed.folder, 'dist/page/runnel.js'));
    const hash = createHash('sha384').update(script).digest('base64');
    expect(read('README.md')).toContain(`integrity="sha384-${hash}"`);
    expect(read('README.md')).toContain(`<!-- Runnel ${manifest.version} -->`);
    expect(read('README.md')).toContain(read('dist/page/paste.html'));
  });

  // The hash is another one after nearly every change of a source. So that not every commit has to touch README.md, it is
  // compared where it counts, in what is packed, and everything else of the lines here.
  it('stand in this README.md as the build writes them, but for the hash, which it writes anew', () => {
    const readme = readFileSync(join(projectRoot, 'README.md'), 'utf8');
    const hash = /(?<=integrity="sha384-)[A-Za-z0-9+/]{64}(?=")/g;
    expect(readme.match(hash)).toHaveLength(1);
    const written = withLinesToPaste(readme, linesToPaste(new Uint8Array()));
    expect(readme.replace(hash, '')).toBe(written.replace(hash, ''));
  });

  it('are written before a package is made and when a version is given out', () => {
    expect(manifest.scripts['prepack']).toBe('npm run build');
    expect(manifest.scripts['version']).toBe('npm run build && git add README.md web-types');
  });

  it('are refused without their markers', () => {
    expect(() => withLinesToPaste('# Runnel', '')).toThrow('between');
  });
});

it('the same sources make the same bundle, wherever they lie', async () => {
  const elsewhere = mkdtempSync(join(tmpdir(), 'runnel-sources-'));
  try {
    for (const path of ['src', 'package.json', 'tsconfig.json']) {
      cpSync(join(projectRoot, path), join(elsewhere, path), { recursive: true });
    }
    symlinkSync(join(projectRoot, 'node_modules'), join(elsewhere, 'node_modules'), 'dir');
    const { outputFiles } = await bundlePage(elsewhere);
    const there = outputFiles.map(({ path, text }) => [basename(path), text]).sort();
    const here = packed.files
      .filter((file) => /^dist\/page\/.*\.js$/.test(file))
      .map((file) => [basename(file), read(file)]);
    expect(there.map(([name]) => name)).toEqual(here.map(([name]) => name).sort());
    expect(Object.fromEntries(there)).toEqual(Object.fromEntries(here));
  } finally {
    rmSync(elsewhere, { recursive: true, force: true });
  }
}, 60_000);
