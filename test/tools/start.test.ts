import { type ChildProcess, spawn } from 'node:child_process';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { freePort } from './free-port.ts';
import { projectRoot } from './source-files.ts';

let server: ChildProcess;
let port: number;
let printed = '';

/** Starts the script as npm does, in a process group of its own so that all of it can be stopped. */
function start(env: NodeJS.ProcessEnv): Promise<ChildProcess> {
  const child = spawn('npm', ['start'], { cwd: projectRoot, env: { ...process.env, ...env }, detached: true });
  return new Promise((resolve, reject) => {
    child.once('exit', (code) => reject(new Error(`npm start ended with ${code}: ${printed}`)));
    child.stderr.on('data', (chunk) => {
      printed += chunk;
    });
    child.stdout.on('data', (chunk) => {
      printed += chunk;
      if (printed.includes('http://')) resolve(child);
    });
  });
}

beforeAll(async () => {
  port = await freePort();
  server = await start({ PORT: String(port), NO_COLOR: '1', FORCE_COLOR: '' });
}, 60_000);

afterAll(() => {
  if (server?.pid !== undefined) process.kill(-server.pid);
});

const get = (path: string): Promise<Response> => fetch(`http://127.0.0.1:${port}${path}`);

it('npm start prints the address with the port that PORT sets', () => {
  expect(printed).toContain(`http://127.0.0.1:${port}/`);
});

it('npm start serves the demo at the root', async () => {
  const response = await get('/');
  expect(response.status).toBe(200);
  expect(response.headers.get('content-type')).toMatch(/^text\/html/);
});

it('npm start serves the sources beside the demo as JavaScript', async () => {
  const response = await get('/src/engine/calendar.ts');
  expect(response.headers.get('content-type')).toMatch(/^text\/javascript/);
  const module = await response.text();
  expect(module).toContain('export function');
  expect(module).not.toContain('export interface');
});
