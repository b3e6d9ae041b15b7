import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import {
  cpSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { compileModules } from '../../.build/steps/compile-modules.ts';
import { writePageBundle } from '../../.build/steps/page-bundle.ts';
import { withLinesToPaste } from '../../.build/steps/readme-paste.ts';
import { filesUnder, projectRoot } from './source-files.ts';

export interface PackedPackage {
  /** Where what the tarball holds lies unpacked, with the libraries that it stands on. */
  readonly folder: string;
  readonly tarball: string;
  /** Paths of the files in the tarball, sorted. */
  readonly files: readonly string[];
}

const CACHE = join(tmpdir(), 'runnel-package');
const HOUR_MS = 3_600_000;
const TARBALL = 'package.tgz';
const FOLDERS = ['src', 'web-types'];
const FILES = ['package.json', 'README.md', 'LICENSE'];
/** What the compiler asks for; it is not packed. */
const SETTINGS = ['tsconfig.json', '.build/tsconfig.json'];

/**
 * The package as `npm pack` makes it of the sources as they stand, built in a folder of its own: dist and README.md stay as
 * they are. Made once for the same sources, however many test files ask, at the same time or later.
 */
export async function packedPackage(): Promise<PackedPackage> {
  const place = join(CACHE, keyOfSources());
  await madeOnce(place, make);
  const files: readonly string[] = JSON.parse(readFileSync(join(place, 'files.json'), 'utf8'));
  return { folder: join(place, 'package'), tarball: join(place, TARBALL), files };
}

function keyOfSources(): string {
  const hash = createHash('sha256');
  const paths = [...FOLDERS, '.build'].flatMap((folder) => filesUnder(folder, ''));
  for (const path of [...paths, ...FILES, 'package-lock.json', 'tsconfig.json']) {
    hash.update(`${path}\0`).update(readFileSync(join(projectRoot, path)));
  }
  return hash.digest('hex').slice(0, 16);
}

/** Waits until a folder is there, made by one process and moved to where it is to be once it is whole. */
export async function madeOnce(place: string, make: (place: string) => Promise<void>): Promise<void> {
  while (!existsSync(place)) {
    if (!takeTurn(`${place}.turn`)) {
      await setTimeout(200);
      continue;
    }
    try {
      if (!existsSync(place)) await make(place);
    } finally {
      rmSync(`${place}.turn`, { recursive: true, force: true });
    }
  }
}

/** True for one process at a time; the turn of one that has died is up. */
function takeTurn(folder: string): boolean {
  mkdirSync(CACHE, { recursive: true });
  try {
    mkdirSync(folder);
    writeFileSync(join(folder, 'process'), String(process.pid));
    return true;
  } catch {
    const holder = existsSync(join(folder, 'process')) ? Number(readFileSync(join(folder, 'process'), 'utf8')) : 0;
    if (holder > 0 && !isAlive(holder)) rmSync(folder, { recursive: true, force: true });
    return false;
  }
}

function isAlive(id: number): boolean {
  try {
    return process.kill(id, 0);
  } catch {
    return false;
  }
}

async function make(place: string): Promise<void> {
  // Those of other sources are of no more use, except to a run that may still be at work with one.
  for (const old of readdirSync(CACHE).map((name) => join(CACHE, name))) {
    const written = statSync(old, { throwIfNoEntry: false })?.mtimeMs;
    if (written !== undefined && Date.now() - written > HOUR_MS) rmSync(old, { recursive: true, force: true });
  }
  const making = `${place}.${process.pid}`;
  const folder = join(making, 'package');
  mkdirSync(folder, { recursive: true });
  for (const path of [...FOLDERS, ...FILES, ...SETTINGS])
    cpSync(join(projectRoot, path), join(folder, path), { recursive: true });
  symlinkSync(join(projectRoot, 'node_modules'), join(folder, 'node_modules'), 'dir');
  compileModules(folder);
  const lines = await writePageBundle(join(folder, 'dist/page'));
  const readme = readFileSync(join(projectRoot, 'README.md'), 'utf8');
  writeFileSync(join(folder, 'README.md'), withLinesToPaste(readme, lines));
  writeFileSync(join(making, 'files.json'), JSON.stringify(pack(folder, making)));
  renameSync(making, place);
}

/** Packs it and tells what went in. What is built before a pack is built already. */
function pack(folder: string, into: string): readonly string[] {
  const args = ['pack', '--json', '--ignore-scripts', '--pack-destination', into];
  const { status, stdout, stderr } = spawnSync('npm', args, { cwd: folder, encoding: 'utf8' });
  if (status !== 0) throw new Error(`npm pack failed: ${stderr}`);
  const told: unknown = JSON.parse(stdout);
  const [packed] = Object.values(told as Record<string, { filename: string; files: { path: string }[] }>);
  if (packed === undefined) throw new Error('npm pack packed nothing.');
  renameSync(join(into, packed.filename), join(into, TARBALL));
  return packed.files.map(({ path }) => path).sort();
}
