/** Two hundred of each element opened and closed, where `npm test` is content with a few: `npm run leaks`. */
import { spawn } from 'node:child_process';

const command = ['vitest', 'run', '--config', 'test/vitest.config.ts', 'test/elements/shared/leaks.test.ts'];
const run = spawn('npx', command, { stdio: 'inherit', env: { ...process.env, LEAK_TIMES: '200' } });
run.on('exit', (code) => {
  process.exitCode = code ?? 1;
});
