/** Trials of hostile input at full size, ten times what `npm test` runs: `npm run fuzz`. */
import { spawn } from 'node:child_process';

const command = ['vitest', 'run', '--config', 'test/vitest.config.ts', 'test/hostile'];
const run = spawn('npx', command, { stdio: 'inherit', env: { ...process.env, FUZZ_TIMES: '10' } });
run.on('exit', (code) => {
  process.exitCode = code ?? 1;
});
