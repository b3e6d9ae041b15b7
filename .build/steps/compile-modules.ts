import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** Compiles each module of src to one of its own, decorators lowered, with declarations and source maps. */
export function compileModules(folder = 'dist'): void {
  const args = ['node_modules/typescript/bin/tsc', '--project', '.build', '--outDir', folder];
  const { status } = spawnSync(process.execPath, args, { stdio: 'inherit', cwd: root });
  if (status !== 0) throw new Error('The sources do not compile: see the faults above.');
}
