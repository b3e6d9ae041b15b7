import { pageWorker, type ResultOf, type WorkerWork } from '../shared/worker/page-worker.ts';
import type { TaskName, TaskSteps } from '../shared/worker/worker-tasks.ts';

/** The result of what the page's worker does where there is one; undefined where it was given up. */
export function inWorker<Name extends TaskName>(
  work: Pick<WorkerWork<Name>, 'name' | 'args' | 'steps' | 'isWanted'>,
): Promise<ResultOf<TaskSteps<Name>> | undefined> {
  const { isWanted } = work;
  return new Promise((resolve, reject) => {
    pageWorker.do<Name>({
      ...work,
      isWanted() {
        if (isWanted()) return true;
        resolve(undefined);
        return false;
      },
      onEnd: resolve,
      onFault: reject,
    });
  });
}
