/** Long work a little at a time, so that the page never waits for it. */

/** Time at a stretch, ms: a frame has 16. */
export const SLICE_MS = 8;

export interface SlicedWork<Step, Result> {
  readonly steps: Generator<Step, Result>;
  /** Asked before every slice; once it says no, the work is given up. */
  readonly isWanted: () => boolean;
  readonly onStep?: (step: Step) => void;
  readonly onEnd: (result: Result) => void;
  /** Time at a stretch, ms; left out, that of a frame. What a person waits for has more: fewer frames come between. */
  readonly sliceMs?: number;
  /** Told what a step threw; left out, the page hears of it as of any error that nobody caught. */
  readonly onFault?: (error: unknown) => void;
}

/** Begins after whatever else waits for the page's attention. A slice ends at the first step that passes its time. */
export function inSlices<Step, Result>(work: SlicedWork<Step, Result>): void {
  afterOthers(() => {
    try {
      slice(work);
    } catch (error) {
      if (work.onFault === undefined) throw error;
      work.onFault(error);
    }
  });
}

function slice<Step, Result>(work: SlicedWork<Step, Result>): void {
  if (!work.isWanted()) return;
  const end = performance.now() + (work.sliceMs ?? SLICE_MS);
  do {
    const step = work.steps.next();
    if (step.done === true) {
      work.onEnd(step.value);
      return;
    }
    work.onStep?.(step.value);
  } while (performance.now() < end);
  inSlices(work);
}

/** Once whatever else waits for the page's attention has had it; unlike a timer, without a pause. */
export function afterOthers(callback: () => void): void {
  const { port1, port2 } = new MessageChannel();
  port1.onmessage = () => {
    port1.close();
    callback();
  };
  port2.postMessage(undefined);
}
