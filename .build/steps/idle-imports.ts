import { basename } from 'node:path';
import type { BuildResult, Metafile } from 'esbuild';

export type Bundle = BuildResult<{ metafile: true; write: false }>;

type Outputs = Metafile['outputs'];

/**
 * A bundle in which no file imports for nothing, since a page is to wait for as little as can be. The bundler keeps the order in which
 * modules run by imports that take no name. In a part that is loaded late most of them are of files that have run long before. And it
 * has an entry that gives something out import its own helpers, which do nothing by themselves. `entries`: the paths of the files that all
 * others are loaded by, each in a page or a worker of its own.
 */
export function withoutIdleImports({ metafile, outputFiles, ...others }: Bundle, entries: readonly string[]): Bundle {
  const { outputs } = metafile;
  for (const entry of entries) if (outputs[entry] === undefined) throw new Error(`The bundle has no ${entry}.`);
  const before = runBefore(entries, outputs);
  const isHelpers = (path: string) => Object.keys(outputs[path]?.inputs ?? {}).length === 0;
  const isIdle = (importer: string, path: string) =>
    before.get(importer)?.has(path) || (entries.includes(importer) && isHelpers(path));
  const kept = { ...outputs };
  const files = outputFiles.map((file) => {
    const [name, output] = Object.entries(outputs).find(([path]) => file.path.endsWith(`/${path}`)) ?? [];
    if (name === undefined || output === undefined) return file;
    const idle = output.imports.filter(({ path }) => isIdle(name, path) && file.text.includes(bareImport(path)));
    const text = idle.reduce((left, { path }) => left.replace(bareImport(path), ''), file.text);
    const contents = new TextEncoder().encode(text);
    const imports = output.imports.filter((each) => !idle.includes(each));
    kept[name] = { ...output, imports, bytes: contents.length };
    return { ...file, contents, text };
  });
  return { ...others, metafile: { ...metafile, outputs: kept }, outputFiles: files };
}

const bareImport = (path: string): string => `import"./${basename(path)}";`;

/** By file what has run before it whoever loads it: what a file imports has run when that file asks for a late part. */
function runBefore(entries: readonly string[], outputs: Outputs): ReadonlyMap<string, ReadonlySet<string>> {
  const before = new Map<string, ReadonlySet<string>>(entries.map((entry) => [entry, new Set()]));
  const waiting = [...entries];
  for (let file = waiting.pop(); file !== undefined; file = waiting.pop()) {
    const own = before.get(file) ?? new Set();
    const whenRun = new Set([...own, ...loadedWith(file, outputs)]);
    for (const { path, kind } of importsOf(file, outputs)) {
      const given = kind === 'dynamic-import' ? whenRun : own;
      const known = before.get(path);
      const both = known === undefined ? given : new Set([...known].filter((each) => given.has(each)));
      if (both.size === known?.size) continue;
      before.set(path, both);
      waiting.push(path);
    }
  }
  return before;
}

/** A file and all that it imports before it runs. */
export function loadedWith(file: string, outputs: Outputs, found = new Set<string>()): ReadonlySet<string> {
  if (found.has(file)) return found;
  found.add(file);
  for (const { path, kind } of importsOf(file, outputs)) {
    if (kind === 'import-statement') loadedWith(path, outputs, found);
  }
  return found;
}

const importsOf = (file: string, outputs: Outputs) =>
  (outputs[file]?.imports ?? []).filter(({ external }) => !external);
