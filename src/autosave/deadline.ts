/** A time by which something is done. */
export class Deadline {
  readonly #act: () => void;
  #timer: ReturnType<typeof setTimeout> | undefined;
  /** In ms of `performance.now()`. */
  #due = Number.POSITIVE_INFINITY;

  constructor(act: () => void) {
    this.#act = act;
  }

  /** Acts within that time; where it is due earlier already, then. */
  within(milliseconds: number): void {
    const due = performance.now() + milliseconds;
    if (due >= this.#due) return;
    this.clear();
    this.#due = due;
    this.#timer = setTimeout(() => {
      this.clear();
      this.#act();
    }, milliseconds);
  }

  clear(): void {
    clearTimeout(this.#timer);
    this.#due = Number.POSITIVE_INFINITY;
  }
}
