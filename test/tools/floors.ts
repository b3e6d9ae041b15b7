import { posix } from 'node:path';
import { readModule } from './module-facts.ts';

/** A path from the root with `/`, and the text that lies there. */
export interface SourceFile {
  readonly path: string;
  readonly text: string;
}

/** What each folder of src may import besides itself. Whatever lies in src itself stands on top and may import all of them. */
const floors: ReadonlyMap<string, readonly string[]> = stacked([
  ['engine'],
  ['plan'],
  ['explain'],
  ['remedies'],
  ['store'],
  ['language', 'look'],
  ['exchange', 'sheet'],
  ['autosave'],
  ['elements'],
]).set('page', ['elements']);

/** Folders that stand side by side see all that lie below them, and not each other. */
function stacked(levels: readonly (readonly string[])[]): Map<string, readonly string[]> {
  return new Map(levels.flatMap((level, height) => level.map((folder) => [folder, levels.slice(0, height).flat()])));
}

/** Libraries that need a page to live in, and the floors that have one. */
const pageLibraries = /^(?:lit|@lit\/[^/]+|handsontable|chart\.js)(?:\/|$)/;
const floorsWithPage = ['look', 'sheet', 'elements', 'src'];

/** Names by which a module reaches the DOM, the clock, the machine's language and time zone, or the outside. */
const surroundings = new Set([
  ...[
    'window',
    'document',
    'navigator',
    'globalThis',
    'customElements',
    'HTMLElement',
    'localStorage',
    'sessionStorage',
  ],
  ...['indexedDB', 'fetch', 'XMLHttpRequest', 'WebSocket', 'Worker', 'requestAnimationFrame', 'process', 'Buffer'],
  ...['Date', 'performance', 'setTimeout', 'setInterval', 'setImmediate', 'Temporal', 'Intl', 'crypto', 'console'],
]);
// Mathematics is welcome, except for chance, and except as a whole, out of which chance could be taken.
const chance = ['Math', 'Math.random'];

/** The most lines a file may have; a folder's own limit, or that of `src`. A table of data is as long as its source. */
const lineLimits: ReadonlyMap<string, number> = new Map([
  ['engine', 250],
  ['src', 300],
]);

const rootEntries = new Set(
  ['package.json', 'package-lock.json', 'tsconfig.json', 'README.md', 'DEVELOPERS.md', 'LICENSE'].concat(
    ['src', 'demo', 'test', 'web-types'],
    ['node_modules', 'dist', 'coverage'],
  ),
);

/** The floor that a file of src stands on: the first folder below src, or `src` itself. */
function floorOf(path: string): string {
  const [, first, ...rest] = path.split('/');
  return first !== undefined && rest.length > 0 ? first : 'src';
}

function importFault(path: string, specifier: string): string | undefined {
  const floor = floorOf(path);
  if (!specifier.startsWith('.')) {
    if (floor === 'engine') return `${path} imports ${specifier}: the engine stands without libraries`;
    const needsPage = pageLibraries.test(specifier) && !floorsWithPage.includes(floor);
    return needsPage ? `${path} imports ${specifier}, which needs a page` : undefined;
  }
  const target = posix.join(posix.dirname(path), specifier);
  if (!target.startsWith('src/')) return `${path} imports ${target}, outside src`;
  const targetFloor = floorOf(target);
  if (targetFloor === floor || floor === 'src' || floors.get(floor)?.includes(targetFloor)) return undefined;
  return `${path} imports ${target}, which does not lie on a floor below it`;
}

/** Imports that run up a floor or sideways, leave src, or bring a library to a floor that has to stand without it. */
export function importFaults({ path, text }: SourceFile): readonly string[] {
  const floor = floorOf(path);
  if (floor !== 'src' && !floors.has(floor)) return [`${path} lies in src/${floor}, which is no floor of the house`];
  return readModule(path, text)
    .specifiers.map((specifier) => importFault(path, specifier))
    .filter((fault) => fault !== undefined);
}

/** Where a module of the engine reaches beyond its arguments. */
export function purityFaults({ path, text }: SourceFile): readonly string[] {
  if (floorOf(path) !== 'engine') return [];
  const reached = [...readModule(path, text).names].filter(
    (name) => surroundings.has(name.split('.')[0] ?? name) || chance.includes(name),
  );
  return reached.map((name) => `${path} uses ${name}: the engine computes from its arguments alone`);
}

export function sizeFaults({ path, text }: SourceFile): readonly string[] {
  if (path.endsWith('.data.ts')) return [];
  const limit = lineLimits.get(floorOf(path)) ?? lineLimits.get('src') ?? 0;
  const lines = text.replace(/\n$/, '').split('\n').length;
  return lines > limit ? [`${path} has ${lines} lines, more than ${limit}: split it where a second idea begins`] : [];
}

/** Circles among files, each as the files of it in order; an import of a type alone counts like any other. */
export function circleFaults(files: readonly SourceFile[]): readonly string[] {
  const imports = new Map(
    files.map(({ path, text }) => [
      path,
      readModule(path, text)
        .specifiers.filter((specifier) => specifier.startsWith('.'))
        .map((specifier) => posix.join(posix.dirname(path), specifier)),
    ]),
  );
  const found: string[] = [];
  const done = new Set<string>();
  const walk = (path: string, above: readonly string[]): void => {
    if (above.includes(path)) {
      found.push(`${[...above.slice(above.indexOf(path)), path].join(' -> ')} is a circle`);
      return;
    }
    if (done.has(path)) return;
    for (const target of imports.get(path) ?? []) walk(target, [...above, path]);
    done.add(path);
  };
  for (const path of imports.keys()) walk(path, []);
  return found;
}

/** What lies at the root and is neither on the list nor begins with a dot. */
export function rootFaults(entries: readonly string[]): readonly string[] {
  return entries
    .filter((entry) => !entry.startsWith('.') && !rootEntries.has(entry))
    .map((entry) => `${entry} lies at the root: move it to where it is used`);
}
