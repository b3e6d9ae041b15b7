import { spawnSync } from 'node:child_process';

/** Compiles each module of src to one of its own in dist, decorators lowered, with declarations and source maps. */
export function compileModules(): void {
  const { status } = spawnSync(process.execPath, ['node_modules/typescript/bin/tsc', '--project', '.build'], {
    stdio: 'inherit',
  });
  if (status !== 0) throw new Error('The sources do not compile: see the faults above.');
}
