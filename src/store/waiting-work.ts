/** Work on a plan that takes a while: what is asked for meanwhile waits its turn, so that all is answered in order. */

/** Goes on with the steps a little at a time, to their end. */
export type Later = (steps: Generator<number, void>) => void;

/**
 * Takes a season's steps one after another, about one a zone, with pauses between; 'given-up' where nobody waits for it any more.
 */
export type SeasonWork = <Result>(steps: Generator<number, Result>, zones: number) => Promise<Result | 'given-up'>;

/** What a reader hardly waits for, in weeks of one planting: some tens of milliseconds. */
export const AT_ONCE = 12_000;

/** Whether to compute the whole of a season, or to draw all that shows it, takes longer than a reader hardly waits for. */
export function isLarge(
  zones: readonly { readonly plantings: readonly unknown[] }[],
  span: { readonly weeks: number },
): boolean {
  return zones.reduce((sum, { plantings }) => sum + plantings.length, 0) * span.weeks > AT_ONCE;
}

/** The result of steps that yield at most so much; undefined where they go on. */
export function resultWithin<Result>(
  steps: Generator<number, Result>,
  most: number,
): { readonly result: Result } | undefined {
  for (;;) {
    const step = steps.next();
    if (step.done === true) return { result: step.value };
    if (step.value > most) return undefined;
  }
}

export class WaitingWork {
  readonly #waiting: Generator<number, void>[] = [];
  #isAtWork = false;

  /** At once where that takes little and nothing waits; else later, after what waits already. */
  request<Result>(steps: Generator<number, Result>, later: Later): Result | Promise<Result> {
    const atOnce = this.#waiting.length === 0 ? resultWithin(steps, AT_ONCE) : undefined;
    if (atOnce !== undefined) return atOnce.result;
    return new Promise((resolve, reject) => {
      this.#waiting.push(answering(steps, resolve, reject));
      if (this.#waiting.length === 1) later(this.#steps());
    });
  }

  /** Does what waits, without a pause. Not of what is just being done: it has come to its end where it tells of itself. */
  settle(): void {
    while (!this.#isAtWork && this.#waiting.length > 0) this.#advance();
  }

  *#steps(): Generator<number, void> {
    while (this.#waiting.length > 0) yield this.#advance();
  }

  #advance(): number {
    this.#isAtWork = true;
    try {
      const step = this.#waiting[0]?.next();
      if (step?.done !== false) this.#waiting.shift();
      return step?.value ?? 0;
    } finally {
      this.#isAtWork = false;
    }
  }
}

function* answering<Result>(
  steps: Generator<number, Result>,
  resolve: (result: Result) => void,
  reject: (error: unknown) => void,
): Generator<number, void> {
  try {
    resolve(yield* steps);
  } catch (error) {
    reject(error);
  }
}
