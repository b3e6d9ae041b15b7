import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** Compiles each module of src to one of its own in dist, decorators lowered, with declarations and maps to the source. */
export function compileModules(place = root): void {
  const args = [join(root, 'node_modules/typescript/bin/tsc'), '--project', '.build'];
  const { status } = spawnSync(process.execPath, args, { stdio: 'inherit', cwd: place });
  if (status !== 0) throw new Error('The sources do not compile: see the faults above.');
}
