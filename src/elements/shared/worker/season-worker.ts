/** What a page's worker runs: a script of its own, loaded by `page-worker.ts`. */
import { serveTasks } from './serve-tasks.ts';

serveTasks(self);
