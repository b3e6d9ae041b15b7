// Lets Node import TypeScript: `node --import ./.build/run-ts.mjs file.ts`.
import { register } from 'node:module';

process.setSourceMapsEnabled(true);
register('./transform-ts.mjs', import.meta.url);
