import { createHash } from 'node:crypto';
import { copyFileSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type BuildResult, build } from 'esbuild';
import { packagesIn, thirdPartyNotices } from './third-party-notices.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** Where the bundle lies, from the root. */
export const PAGE_FOLDER = 'dist/page';

type Bundle = BuildResult<{ metafile: true; write: false }>;

/** Bundles the one script of a page and what it loads late. In memory: who asks decides where it goes. */
export function bundlePage(): Promise<Bundle> {
  return build({
    absWorkingDir: root,
    entryPoints: { runnel: 'src/page/runnel.ts' },
    outdir: PAGE_FOLDER,
    chunkNames: 'part-[hash]',
    bundle: true,
    splitting: true,
    minify: true,
    format: 'esm',
    target: 'es2022',
    conditions: ['production'],
    // They stand in LICENSES.txt beside it, whole.
    legalComments: 'none',
    metafile: true,
    write: false,
    logLevel: 'error',
  });
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

/** Writes the bundle to dist/page, with its licences beside it and the lines to paste. */
export async function writePageBundle(): Promise<void> {
  const { outputFiles, metafile } = await bundlePage();
  const folder = join(root, PAGE_FOLDER);
  // Its modules one by one lie there too, and are of no use to anybody.
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  for (const { path, contents } of outputFiles) writeFileSync(path, contents);
  copyFileSync(join(root, 'LICENSE'), join(folder, 'LICENSE'));
  writeFileSync(join(folder, 'LICENSES.txt'), thirdPartyNotices(packagesIn(Object.keys(metafile.inputs))));
  const entry = outputFiles.find(({ path }) => path.endsWith('/runnel.js'));
  if (entry === undefined) throw new Error('The page bundle has no runnel.js.');
  writeFileSync(join(folder, 'paste.html'), linesToPaste(entry.contents));
}

/** What a page's author pastes: the version in a comment, and the script tied to its content. */
function linesToPaste(script: Uint8Array): string {
  const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { version: string };
  const integrity = `sha384-${createHash('sha384').update(script).digest('base64')}`;
  return `<!-- Runnel ${version} -->
<script type="module" src="runnel/runnel.js" integrity="${integrity}"></script>
<div data-runnel="planner" data-src="our-garden.runnel.json" data-license-key="non-commercial-and-evaluation"></div>
`;
}
