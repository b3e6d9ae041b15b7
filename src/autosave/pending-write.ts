import type { Plan } from '../plan/schema/plan-schema.ts';

const RETRY_AFTER_MS = 3000;

/** How long an edit waits for those that follow it at once. */
export const WRITE_AFTER_MS = 250;

/** The newest plan that is to be written, and when. */
export class PendingWrite {
  #plan: Plan | undefined;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #isRetry = false;
  readonly #write: (plan: Plan) => boolean;

  /** `write` gives true where the plan is safe; where it is not, it is tried again by and by. */
  constructor(write: (plan: Plan) => boolean) {
    this.#write = write;
  }

  get isDone(): boolean {
    return this.#plan === undefined;
  }

  /** Writes a plan within that time, or one that comes until then in its place. */
  put(plan: Plan | undefined, withinMs: number): void {
    this.#plan = plan;
    if (this.#timer !== undefined && !this.#isRetry) return;
    this.#wait(withinMs);
    this.#isRetry = false;
  }

  /** Writes at once; true where nothing is left to write. */
  now(): boolean {
    clearTimeout(this.#timer);
    this.#timer = undefined;
    const plan = this.#plan;
    // Writing may find that something else has to be written first.
    this.#plan = undefined;
    if (plan === undefined || this.#write(plan)) return this.isDone;
    this.#plan ??= plan;
    this.#wait(RETRY_AFTER_MS);
    this.#isRetry = true;
    return false;
  }

  drop(): void {
    clearTimeout(this.#timer);
    this.#timer = undefined;
    this.#plan = undefined;
  }

  #wait(milliseconds: number): void {
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => this.now(), milliseconds);
  }
}
