import { createServer } from 'node:net';

/** A port of this machine that nobody listens on, chosen by the system, so that two who ask at once get two. */
export function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const probe = createServer().on('error', reject);
    probe.listen(0, '127.0.0.1', () => {
      const address = probe.address();
      probe.close(() =>
        address && typeof address === 'object' ? resolve(address.port) : reject(new Error('no port')),
      );
    });
  });
}
