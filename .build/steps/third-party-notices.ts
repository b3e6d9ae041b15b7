import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** A package of node_modules as its own manifest and licence files tell of it. */
export interface ThirdParty {
  readonly name: string;
  readonly version: string;
  /** What its manifest says. */
  readonly license: string;
  /** The texts of its licence and notice files. */
  readonly texts: readonly string[];
}

/** The packages from which a bundle took modules, by name. */
export function packagesIn(inputs: readonly string[]): readonly ThirdParty[] {
  const folders = inputs.flatMap((path) => path.match(/^.*node_modules\/(?:@[^/]+\/)?[^/]+(?=\/)/)?.[0] ?? []);
  return [...new Set(folders)].map(thirdParty).sort((a, b) => a.name.localeCompare(b.name));
}

function thirdParty(folder: string): ThirdParty {
  const place = join(root, folder);
  const manifest: { name: string; version: string; license?: string } = JSON.parse(
    readFileSync(join(place, 'package.json'), 'utf8'),
  );
  const files = readdirSync(place).filter((file) => /^(?:licen[cs]e|notice|copying)/i.test(file));
  return {
    name: manifest.name,
    version: manifest.version,
    license: manifest.license ?? 'not stated',
    texts: files.sort().map((file) => readFileSync(join(place, file), 'utf8').trim()),
  };
}

const OPENING = `What this bundle carries
========================

Runnel itself is under the MIT licence: see LICENSE beside this file.

The bundle as a whole is not. Its spreadsheet is Handsontable, which is not under MIT and not free for every use: it may be
used without payment for non-commercial purposes and for evaluation, under the terms below, with the licence key
non-commercial-and-evaluation. Any commercial use, and a council's counts as one, needs a key bought from its makers. A page
that shows no grid and no planner does not load it.

Every other package below is under a permissive licence, printed whole.
`;

/** The text of LICENSES.txt. A package without a licence file of its own says so by the licence that its manifest names. */
export function thirdPartyNotices(packages: readonly ThirdParty[]): string {
  const parts = packages.map(({ name, version, license, texts }) => {
    const title = `${name} ${version} (${license})`;
    return [title, '-'.repeat(title.length), '', ...texts].join('\n');
  });
  return `${[OPENING, ...parts].join('\n\n')}\n`;
}
