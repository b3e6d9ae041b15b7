import { spawnSync } from 'node:child_process';
import { projectRoot } from './source-files.ts';
import { failure, type Tally } from './tally.ts';

interface Check {
  readonly name: string;
  /** The script of a package in node_modules that checks, and its arguments. */
  readonly script: string;
  readonly args: readonly string[];
}

const typescript = 'node_modules/typescript/bin/tsc';
const biome = 'node_modules/@biomejs/biome/bin/biome';

/** The checks of the sources as they lie there. Each passes or fails as a whole. */
const checks: readonly Check[] = [
  { name: 'types', script: typescript, args: ['--project', '.'] },
  { name: 'types of what ships, without Node', script: typescript, args: ['--project', '.build', '--noEmit'] },
  {
    name: 'types of the engine, without the DOM',
    script: typescript,
    args: ['--project', 'test/tools/engine.tsconfig.json'],
  },
  { name: 'lint', script: biome, args: ['lint', '--error-on-warnings'] },
  { name: 'format', script: biome, args: ['check', '--linter-enabled=false', '--error-on-warnings'] },
];

/** Runs a script of Node in the project's root with its output shown, and gives its exit code. */
export function runScript(script: string, args: readonly string[], env: NodeJS.ProcessEnv = {}): number | null {
  return spawnSync(process.execPath, [script, ...args], {
    cwd: projectRoot,
    stdio: 'inherit',
    env: { ...process.env, ...env },
  }).status;
}

export function runChecks(): readonly Tally[] {
  return checks.map(({ name, script, args }) => {
    console.log(`\n${name}`);
    return runScript(script, args) === 0 ? { passed: 1, failed: 0, remarks: [] } : failure(`failed: ${name}`);
  });
}
