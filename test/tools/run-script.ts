import { spawn } from 'node:child_process';
import { projectRoot } from './source-files.ts';

/**
 * Runs a script of Node in the project's root and gives its exit code, null where it was killed. What it prints comes whole when it ends,
 * under its title: others may run beside it.
 */
export function runScript(
  title: string,
  script: string,
  args: readonly string[],
  env: NodeJS.ProcessEnv = {},
): Promise<number | null> {
  const begun = performance.now();
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [script, ...args], {
      cwd: projectRoot,
      stdio: ['ignore', 'pipe', 'pipe'],
      env: { ...process.env, ...env },
    });
    const printed: Buffer[] = [];
    const keep = (chunk: Buffer): void => void printed.push(chunk);
    child.stdout.on('data', keep);
    child.stderr.on('data', keep);
    child.on('error', reject);
    child.on('close', (exitCode) => {
      const seconds = ((performance.now() - begun) / 1000).toFixed(0);
      process.stdout.write(`\n${title} (${seconds} s)\n${Buffer.concat(printed).toString('utf8')}`);
      resolve(exitCode);
    });
  });
}
