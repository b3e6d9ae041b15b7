import type { Metafile } from 'esbuild';
import { loadedWith } from './idle-imports.ts';

type Outputs = Metafile['outputs'];

/** How many bytes, minified, a late part may come to load without a use for them: a request costs more, and so does a file's own frame. */
const SPARE_BYTES = 4096;

/** The same for a part that loads much. */
const SPARE_BYTES_OF_HEAVY = 1536;
const HEAVY_BYTES = 70_000;

/** A file that several late parts load, or several of them. */
interface Shared {
  readonly modules: readonly string[];
  /** What is loaded with it. */
  readonly files: ReadonlySet<string>;
  /** The late parts that load it, by the file they begin with. */
  readonly parts: ReadonlySet<string>;
  /** Whether it is loaded without them. */
  readonly isAtOnce: boolean;
  /** Whether something that is loaded with it needs a page, which a worker has not. */
  readonly needsPage: boolean;
  /** Whether it may ask for something late: no part is given what it has no use for at all, such as a library. */
  readonly mayLoadMore: boolean;
}

/** The files that others are loaded by. */
interface Beginnings {
  readonly entry: string;
  /** What a worker begins with: a late part, where nothing of the page is there before. */
  readonly worker: string | undefined;
}

/** What is known of a module by its path. */
interface Modules {
  /** It does something when it runs, and so is imported by whoever wants that alone. */
  readonly actsByItself: (module: string) => boolean;
  readonly needsPage: (module: string) => boolean;
}

/** What becomes one file, and what it is made of. */
interface Group {
  readonly whole: Shared;
  readonly own: readonly Shared[];
}

interface Late {
  readonly outputs: Outputs;
  readonly atOnce: ReadonlySet<string>;
  readonly worker: string | undefined;
  /** By late part, the files that are there when it runs. */
  readonly loads: Map<string, ReadonlySet<string>>;
  /** By late part, how many bytes more it may load. */
  readonly spare: Map<string, number>;
}

/**
 * By the module that a late part begins with, the modules that it is to import besides, so that files which nearly the same parts load
 * become one. `outputs`: the bundler's account; `begin.entry` comes to load nothing more.
 */
export function furtherImports(
  outputs: Outputs,
  begin: Beginnings,
  about: Modules,
): ReadonlyMap<string, readonly string[]> {
  const wanted = new Map<string, readonly string[]>();
  for (const { whole, own } of groupsOf(lateIn(outputs, begin), about)) {
    for (const part of whole.parts) {
      const missing = own.filter(({ parts }) => !parts.has(part)).flatMap(({ modules }) => modules);
      const module = outputs[part]?.entryPoint;
      if (module === undefined || missing.length === 0) continue;
      wanted.set(module, [...(wanted.get(module) ?? []), ...missing]);
    }
  }
  return wanted;
}

function lateIn(outputs: Outputs, { entry, worker }: Beginnings): Late {
  const atOnce = loadedWith(entry, outputs);
  const parts = Object.keys(outputs).filter((path) => outputs[path]?.entryPoint !== undefined && !atOnce.has(path));
  const before = (part: string) => (part === worker ? [] : atOnce);
  const loads = new Map(parts.map((part) => [part, loadedWith(part, outputs, new Set(before(part)))]));
  const spareOf = (part: string) => {
    const later = [...(loads.get(part) ?? [])].filter((file) => !atOnce.has(file));
    return bytesOf(later, outputs) > HEAVY_BYTES ? SPARE_BYTES_OF_HEAVY : SPARE_BYTES;
  };
  return { outputs, atOnce, worker, loads, spare: new Map(parts.map((part) => [part, spareOf(part)])) };
}

const bytesOf = (files: readonly string[], outputs: Outputs): number =>
  files.reduce((sum, file) => sum + (outputs[file]?.bytes ?? 0), 0);

/** The two that cost the parts the fewest bytes become one, and so on while no part loads too much. */
function groupsOf(late: Late, about: Modules): readonly Group[] {
  let groups: Group[] = sharedFiles(late, about).map((shared) => ({ whole: shared, own: [shared] }));
  for (let pair = cheapestPair(groups, late); pair !== undefined; pair = cheapestPair(groups, late)) {
    const [one, other] = pair;
    for (const { part, files, bytes } of loadedMore(one.whole, other.whole, late)) {
      late.spare.set(part, (late.spare.get(part) ?? 0) - bytes);
      late.loads.set(part, new Set([...(late.loads.get(part) ?? []), ...files]));
    }
    const joined = { whole: union(one.whole, other.whole), own: [...one.own, ...other.own] };
    groups = [...groups.filter((group) => group !== one && group !== other), joined];
  }
  return groups;
}

function sharedFiles(
  { outputs, atOnce, worker, loads }: Late,
  { actsByItself, needsPage }: Modules,
): readonly Shared[] {
  const inWorker = loads.get(worker ?? '');
  const modulesOf = (file: string) => Object.keys(outputs[file]?.inputs ?? {});
  const loaders = new Map<string, Set<string>>();
  for (const part of loads.keys()) {
    for (const file of loadedWith(part, outputs)) loaders.set(file, (loaders.get(file) ?? new Set()).add(part));
  }
  return [...loaders].flatMap(([path, parts]) => {
    const { entryPoint, inputs = {} } = outputs[path] ?? {};
    const modules = Object.keys(inputs);
    const stays = entryPoint !== undefined || modules.length === 0 || modules.some(actsByItself);
    if (stays) return [];
    const files = loadedWith(path, outputs);
    const mayLoadMore = [...files].some((file) => outputs[file]?.imports.some(({ kind }) => kind === 'dynamic-import'));
    const isOfPage = [...files].some((file) => inWorker?.has(file) !== true && modulesOf(file).some(needsPage));
    return [{ modules, files, parts, isAtOnce: atOnce.has(path), needsPage: isOfPage, mayLoadMore }];
  });
}

const union = (one: Shared, other: Shared): Shared => ({
  modules: [...one.modules, ...other.modules],
  files: new Set([...one.files, ...other.files]),
  parts: new Set([...one.parts, ...other.parts]),
  isAtOnce: one.isAtOnce,
  needsPage: one.needsPage || other.needsPage,
  mayLoadMore: one.mayLoadMore || other.mayLoadMore,
});

function cheapestPair(groups: readonly Group[], late: Late): readonly [Group, Group] | undefined {
  let cheapest: readonly [Group, Group] | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const [index, one] of groups.entries()) {
    for (const other of groups.slice(index + 1)) {
      if (one.whole.isAtOnce !== other.whole.isAtOnce) continue;
      const bytes = costOf(one.whole, other.whole, late, least);
      if (bytes >= least || isImportedBack(union(one.whole, other.whole), late.outputs)) continue;
      cheapest = [one, other];
      least = bytes;
      if (least === 0) return cheapest;
    }
  }
  return cheapest;
}

/** How many bytes all parts load more once two are one; infinite where that is more than one of them may, or than `most`. */
function costOf(one: Shared, other: Shared, late: Late, most: number): number {
  let sum = 0;
  for (const { part, bytes } of loadedMore(one, other, late)) {
    sum += bytes;
    if (sum >= most || bytes > (late.spare.get(part) ?? 0)) return Number.POSITIVE_INFINITY;
  }
  return sum;
}

interface LoadedMore {
  readonly part: string;
  readonly files: readonly string[];
  readonly bytes: number;
}

/** What each part that loads one of two loads more once they are one. */
function* loadedMore(one: Shared, other: Shared, { outputs, loads, worker }: Late): Generator<LoadedMore> {
  for (const [shared, { parts }] of [[one, other] as const, [other, one] as const]) {
    for (const part of parts) {
      if (shared.parts.has(part)) continue;
      const there = loads.get(part);
      const files = [...shared.files].filter((file) => !there?.has(file));
      const isBarred = shared.mayLoadMore || (part === worker && shared.needsPage);
      yield { part, files, bytes: isBarred ? Number.POSITIVE_INFINITY : bytesOf(files, outputs) };
    }
  }
}

/** Whether a part would import what imports that part. */
function isImportedBack({ files, parts }: Shared, outputs: Outputs): boolean {
  const modules = new Set([...files].flatMap((file) => Object.keys(outputs[file]?.inputs ?? {})));
  return [...parts].some((part) => files.has(part) || modules.has(outputs[part]?.entryPoint ?? ''));
}
