import { spawn } from 'node:child_process';
import { projectRoot } from './source-files.ts';

/** How each script that is running is ended, with what it printed so far. */
const running = new Set<() => void>();

for (const signal of ['SIGINT', 'SIGTERM'] as const) {
  process.once(signal, () => {
    for (const stop of running) stop();
    process.exit(1);
  });
}

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
    const print = (ending: string): void => {
      const seconds = ((performance.now() - begun) / 1000).toFixed(0);
      process.stdout.write(`\n${title} (${ending}${seconds} s)\n${Buffer.concat(printed).toString('utf8')}`);
    };
    const stop = (): void => {
      print('stopped after ');
      child.kill();
    };
    running.add(stop);
    child.stdout.on('data', keep);
    child.stderr.on('data', keep);
    child.on('error', reject);
    child.on('close', (exitCode) => {
      running.delete(stop);
      print('');
      resolve(exitCode);
    });
  });
}
