import { inSlices } from '../shared/in-slices.ts';

/** The result of work in steps, a slice at a time; undefined where it was given up. */
export function sliced<Result>(
  steps: Generator<unknown, Result>,
  isWanted: () => boolean,
): Promise<Result | undefined> {
  return new Promise((resolve, reject) => {
    inSlices({
      steps,
      isWanted: () => {
        if (isWanted()) return true;
        resolve(undefined);
        return false;
      },
      onEnd: resolve,
      onFault: reject,
    });
  });
}
