/** What the bench's worker thread runs: what a page's worker runs, and whoever waits for a result is woken. */
import { type MessagePort, workerData } from 'node:worker_threads';
import { serveTasks, type TaskPort } from '../../src/elements/shared/worker/serve-tasks.ts';

/** `results`: how many there are. */
const { port, results }: { readonly port: MessagePort; readonly results: Int32Array } = workerData;

const waking: TaskPort = {
  onmessage: null,
  postMessage(told) {
    port.postMessage(told);
    if (told.step !== 'done' && told.step !== 'failed') return;
    Atomics.add(results, 0, 1);
    Atomics.notify(results, 0);
  },
};
serveTasks(waking);
port.on('message', (data) => waking.onmessage?.({ data } as MessageEvent));
