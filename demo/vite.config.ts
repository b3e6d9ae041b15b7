import { fileURLToPath } from 'node:url';
import { defineConfig, type Plugin } from 'vite';
import { type PageFile, pageFile } from '../.build/steps/page-bundle.ts';

const fromHere = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

/**
 * The club's pages ask for the built bundle, as a club's own would. Here it is bundled from the sources, at the first
 * request and for as long as the server runs; any other server gives out what `npm run build` wrote.
 */
function pageBundle(): Plugin {
  return {
    name: 'page-bundle',
    configureServer({ middlewares }) {
      middlewares.use((request, response, next) => {
        const answer = (file: PageFile | undefined) => {
          if (file === undefined) return next();
          response.setHeader('content-type', file.type);
          response.end(file.text);
        };
        pageFile(request.url ?? '').then(answer, next);
      });
    },
  };
}

/** The development server of `npm start`. PORT and HOST in the environment say where it listens. */
export default defineConfig({
  root: fromHere('.'),
  clearScreen: false,
  plugins: [pageBundle()],
  // The sources lie beside the pages, above the server's root: `../src/x.ts` in a page arrives here as `/src/x.ts`.
  resolve: { alias: [{ find: /^\/src\//, replacement: fromHere('../src/') }] },
  server: {
    host: process.env['HOST'] ?? '127.0.0.1',
    port: Number(process.env['PORT'] ?? 5173),
    strictPort: true,
    fs: { allow: [fromHere('..')] },
  },
});
