/**
 * What a cell says in words, as its title: the pointer shows it, a screen reader reads it after the figures. It is written
 * once the sheet has come to rest, or when somebody reaches the cell: while cells scroll by, nobody reads them.
 */

/** The sheet is at rest after this long without a cell being drawn, and at most twice as long. */
const REST_MS = 100;

/** What is on its way to somebody: the pointer over a cell, the keyboard in it. */
const REACHED = ['pointerover', 'focusin'] as const;

export class CellTitles {
  readonly #root: HTMLElement;
  readonly #wordsOf: (td: HTMLTableCellElement) => string | undefined;
  readonly #untitled = new Set<HTMLTableCellElement>();
  #timer: ReturnType<typeof setTimeout> | undefined;
  #isMoving = false;

  /** `wordsOf` gives nothing for a cell that has no part in the season. */
  constructor(root: HTMLElement, wordsOf: (td: HTMLTableCellElement) => string | undefined) {
    this.#root = root;
    this.#wordsOf = wordsOf;
    for (const event of REACHED) root.addEventListener(event, this.#onReached);
  }

  /** A cell was drawn anew: its title no longer holds. */
  drawn(td: HTMLTableCellElement): void {
    td.removeAttribute('title');
    this.#untitled.add(td);
    this.#isMoving = true;
    this.#timer ??= setTimeout(this.#onRest, REST_MS);
  }

  /** Writes it at once. */
  write(td: HTMLTableCellElement): void {
    this.#untitled.delete(td);
    const words = this.#wordsOf(td);
    if (words !== undefined) td.title = words;
  }

  /** Writes all that is not yet written. */
  writeAll(): void {
    clearTimeout(this.#timer);
    this.#timer = undefined;
    for (const td of this.#untitled) this.write(td);
  }

  stop(): void {
    clearTimeout(this.#timer);
    this.#untitled.clear();
    for (const event of REACHED) this.#root.removeEventListener(event, this.#onReached);
  }

  readonly #onRest = () => {
    this.#timer = undefined;
    if (this.#isMoving) {
      this.#isMoving = false;
      this.#timer = setTimeout(this.#onRest, REST_MS);
    } else this.writeAll();
  };

  readonly #onReached = ({ target }: Event) => {
    const td = (target as Element).closest('td');
    if (td !== null && this.#untitled.has(td)) this.write(td);
  };
}
