import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';

const fromHere = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

/** The development server of `npm start`. PORT and HOST in the environment say where it listens. */
export default defineConfig({
  root: fromHere('.'),
  clearScreen: false,
  // The sources lie beside the pages, above the server's root: `../src/x.ts` in a page arrives here as `/src/x.ts`.
  resolve: { alias: [{ find: /^\/src\//, replacement: fromHere('../src/') }] },
  server: {
    host: process.env['HOST'] ?? '127.0.0.1',
    port: Number(process.env['PORT'] ?? 5173),
    strictPort: true,
    fs: { allow: [fromHere('..')] },
  },
});
