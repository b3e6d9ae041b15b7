import { spawn } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, realpathSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { readPackageManifest } from './package-exports.ts';
import { madeOnce, packedPackage } from './packed-package.ts';

export interface Ended {
  readonly status: number | null;
  readonly said: string;
}

/** A project of somebody who installed the package. */
export interface InstalledProject {
  readonly folder: string;
  /** Writes files by path from the folder. */
  readonly write: (files: Readonly<Record<string, string>>) => void;
  readonly run: (command: string, args: readonly string[]) => Promise<Ended>;
  readonly remove: () => void;
}

/** Makes one outside this project, where nothing of it is found but what the tarball brings. */
export async function installedProject(files: Readonly<Record<string, string>>): Promise<InstalledProject> {
  const { tarball } = await packedPackage();
  const installed = join(dirname(tarball), 'installed');
  await madeOnce(installed, (place) => install(tarball, place));
  const folder = realpathSync(mkdtempSync(join(tmpdir(), 'runnel-project-')));
  cpSync(installed, folder, { recursive: true, verbatimSymlinks: true });
  const project: InstalledProject = {
    folder,
    write: (more) => {
      for (const [path, text] of Object.entries(more)) {
        mkdirSync(dirname(join(folder, path)), { recursive: true });
        writeFileSync(join(folder, path), text);
      }
    },
    run: (command, args) => run(command, args, folder),
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
  project.write(files);
  return project;
}

/** An empty project with the package in it, once for all that ask: npm takes longer for it than most of their tests. */
async function install(tarball: string, place: string): Promise<void> {
  const making = `${place}.${process.pid}`;
  mkdirSync(making);
  const manifest = { private: true, type: 'module', dependencies: { [readPackageManifest().name]: `file:${tarball}` } };
  writeFileSync(join(making, 'package.json'), JSON.stringify(manifest));
  const quick = ['--prefer-offline', '--no-audit', '--no-fund', '--no-package-lock', '--ignore-scripts'];
  const { status, said } = await run('npm', ['install', ...quick], making);
  if (status !== 0) throw new Error(`npm install failed: ${said}`);
  renameSync(making, place);
}

function run(command: string, args: readonly string[], cwd: string): Promise<Ended> {
  return new Promise((resolve, reject) => {
    const child = spawn(command, args, { cwd, stdio: ['ignore', 'pipe', 'pipe'] });
    let said = '';
    const hear = (chunk: Buffer): void => {
      said += chunk;
    };
    child.stdout.on('data', hear);
    child.stderr.on('data', hear);
    child.on('error', reject);
    child.on('close', (status) => resolve({ status, said }));
  });
}
