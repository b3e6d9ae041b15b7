import { readFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';

export interface ServedFolder {
  readonly origin: string;
  readonly stop: () => Promise<void>;
}

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.json': 'application/json',
  '.css': 'text/css',
};

/** Serves a folder's files as they are, as any plain server does, on a free port of this machine. */
export async function servedFolder(folder: string): Promise<ServedFolder> {
  const server = createServer(async ({ url = '/' }, response) => {
    const path = normalize(decodeURIComponent(new URL(url, 'http://localhost').pathname));
    try {
      const body = await readFile(join(folder, path));
      response.writeHead(200, { 'content-type': TYPES[extname(path)] ?? 'application/octet-stream' }).end(body);
    } catch {
      response.writeHead(404).end();
    }
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  const stop = (): Promise<void> =>
    new Promise((resolve) => {
      server.close(() => resolve());
      server.closeAllConnections();
    });
  return { origin: `http://127.0.0.1:${port}`, stop };
}
