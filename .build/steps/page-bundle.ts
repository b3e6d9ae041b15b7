import { copyFileSync, mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { BuildOptions } from 'esbuild';
import { compactTemplates } from './compact-templates.ts';
import type { Bundle } from './idle-imports.ts';
import { bundleJoined } from './joined-chunks.ts';
import { linesToPaste } from './readme-paste.ts';
import { packagesIn, thirdPartyNotices } from './third-party-notices.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** Where the bundle lies, from the root. */
export const PAGE_FOLDER = 'dist/page';

/** What loads late is named by its bytes alone: every part that imports it says its name. */
export const CHUNK_NAMES = '[hash]';

/** What a page's worker runs, by the name under which `page-worker.ts` asks for it beside the page's own files. */
export const WORKER_ENTRY = { in: 'src/elements/shared/worker/season-worker.ts', out: 'season-worker' } as const;

/**
 * Bundles the one script of a page, what it loads late, and the script of its worker, which share their parts. In memory: who asks
 * decides where it goes. `place` is where the sources lie; the same sources make the same bytes wherever that is.
 */
export function bundlePage(place = root): Promise<Bundle> {
  const options: BuildOptions = {
    absWorkingDir: place,
    // Names of files are made of paths too, so a node_modules that is only linked to must not show.
    preserveSymlinks: true,
    entryPoints: [{ in: 'src/page/runnel.ts', out: 'runnel' }, WORKER_ENTRY],
    outdir: PAGE_FOLDER,
    chunkNames: CHUNK_NAMES,
    minify: true,
    format: 'esm',
    target: 'es2022',
    conditions: ['production'],
    // They stand in LICENSES.txt beside it, whole.
    legalComments: 'none',
    plugins: [compactTemplates],
    logLevel: 'error',
  };
  return bundleJoined(options, `${PAGE_FOLDER}/runnel.js`, `${PAGE_FOLDER}/${WORKER_ENTRY.out}.js`);
}

export interface PageFile {
  readonly type: string;
  readonly text: string;
}

let served: Promise<Bundle> | undefined;

/** What a server answers for an address under /dist/page/, bundled when first asked for; undefined for any other address. */
export async function pageFile(address: string): Promise<PageFile | undefined> {
  const [path = ''] = address.split('?');
  if (!path.startsWith(`/${PAGE_FOLDER}/`)) return undefined;
  served ??= bundlePage();
  const file = (await served).outputFiles.find((each) => each.path === join(root, path));
  return file && { type: 'text/javascript', text: file.text };
}

/** Writes the bundle to a folder, with its licences beside it and the lines to paste, which it gives back too. */
export async function writePageBundle(folder = join(root, PAGE_FOLDER)): Promise<string> {
  const { outputFiles, metafile } = await bundlePage();
  // Its modules one by one lie there too, and are of no use to anybody.
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  for (const { path, contents } of outputFiles) writeFileSync(join(folder, basename(path)), contents);
  // It gives nothing out: who imports it does so for what it does.
  writeFileSync(join(folder, 'runnel.d.ts'), 'export {};\n');
  copyFileSync(join(root, 'LICENSE'), join(folder, 'LICENSE'));
  writeFileSync(join(folder, 'LICENSES.txt'), thirdPartyNotices(packagesIn(Object.keys(metafile.inputs))));
  const entry = outputFiles.find(({ path }) => basename(path) === 'runnel.js');
  if (entry === undefined) throw new Error('The page bundle has no runnel.js.');
  const lines = linesToPaste(entry.contents);
  writeFileSync(join(folder, 'paste.html'), lines);
  return lines;
}
