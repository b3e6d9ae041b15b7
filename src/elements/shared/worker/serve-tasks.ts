import { inSlices } from '../in-slices.ts';
import type { Asked, Told } from './worker-messages.ts';
import { type TaskName, WORKER_TASKS } from './worker-tasks.ts';

/** The side of a worker that its page speaks to. */
export interface TaskPort {
  onmessage: ((event: MessageEvent<Asked>) => void) | null;
  postMessage(told: Told): void;
}

/** Time at a stretch, ms: between two, a worker hears that work is given up. */
const STRETCH_MS = 16;

/** Does what is asked for at a port, several things side by side, and tells how far it has come about once a stretch. */
export function serveTasks(port: TaskPort, stretchMs = STRETCH_MS): void {
  const wanted = new Set<number>();
  port.onmessage = ({ data: { id, task } }) => {
    if (task === undefined) {
      wanted.delete(id);
      return;
    }
    wanted.add(id);
    let told = performance.now();
    inSlices<unknown, unknown>({
      steps: stepsOf(task),
      isWanted: () => wanted.has(id),
      sliceMs: stretchMs,
      onStep(done) {
        const now = performance.now();
        if (now - told < stretchMs) return;
        told = now;
        port.postMessage({ step: 'working', id, done });
      },
      onEnd: (result) => port.postMessage({ step: 'done', id, result }),
      onFault: () => port.postMessage({ step: 'failed', id }),
    });
  };
  port.postMessage({ step: 'ready' });
}

/** Its page took the arguments' types from the same table. */
function* stepsOf({ name, args }: NonNullable<Asked['task']>): Generator<unknown, unknown> {
  const task = WORKER_TASKS[name as TaskName] as (...given: readonly unknown[]) => Generator<unknown, unknown>;
  return yield* task(...args);
}
