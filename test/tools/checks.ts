import { runScript } from './run-script.ts';
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

/** One check after the other. */
export async function runChecks(): Promise<readonly Tally[]> {
  const tallies: Tally[] = [];
  for (const { name, script, args } of checks) {
    const passed = (await runScript(name, script, args)) === 0;
    tallies.push(passed ? { passed: 1, failed: 0, remarks: [] } : failure(`failed: ${name}`));
  }
  return tallies;
}
