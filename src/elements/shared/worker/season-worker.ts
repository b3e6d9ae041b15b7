/** What a page's worker runs: a script of its own, loaded by `page-worker.ts`. */
import { serveTasks } from './serve-tasks.ts';

// Elsewhere than in a browser it does nothing.
if (typeof self !== 'undefined') serveTasks(self);
