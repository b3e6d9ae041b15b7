/** A few words beside a cell, announced as well: why an entry was refused, what a paste left out. */
import type Handsontable from 'handsontable/base';
import { positionBeside } from './popup-position.ts';

export class CellCallout {
  readonly #hot: Handsontable.Core;
  readonly #box: HTMLElement;
  readonly #status: HTMLElement;
  /** What is being typed would set this. */
  readonly #hint: HTMLElement;
  /** Lines of several callers about one change, shown together. */
  #soon: string[] = [];

  constructor(hot: Handsontable.Core) {
    this.#hot = hot;
    const { rootDocument } = hot;
    this.#box = rootDocument.createElement('div');
    this.#box.className = 'runnel-callout';
    this.#box.hidden = true;
    this.#status = rootDocument.createElement('div');
    this.#status.className = 'runnel-announcement';
    // One polite region for every announcement of the sheet.
    this.#status.setAttribute('role', 'status');
    this.#hint = rootDocument.createElement('div');
    this.#hint.className = 'runnel-hint';
    this.#hint.hidden = true;
    this.#hint.setAttribute('aria-hidden', 'true');
    hot.rootPortalElement.append(this.#box, this.#status, this.#hint);
  }

  /** Shows lines of text beside a cell until something else happens there. */
  show(visualRow: number, visualColumn: number, lines: readonly string[]): void {
    const paragraphs = lines.map((line) => {
      const paragraph = this.#hot.rootDocument.createElement('p');
      paragraph.textContent = line;
      return paragraph;
    });
    this.#box.replaceChildren(...paragraphs);
    this.#box.hidden = false;
    this.#hint.hidden = true;
    positionBeside(this.#box, this.#hot.getCell(visualRow, visualColumn, true) ?? this.#hot.rootElement);
    this.announce('');
  }

  /** The same once Handsontable has moved its selection after what was done. */
  showSoon(visualRow: number, visualColumn: number, lines: readonly string[]): void {
    const isWaiting = this.#soon.length > 0;
    this.#soon.push(...lines);
    if (isWaiting) return;
    this.#hot.rootWindow.setTimeout(() => {
      const all = this.#soon;
      this.#soon = [];
      if (!this.#hot.isDestroyed) this.show(visualRow, visualColumn, all);
    });
  }

  /** Announces words to screen readers, and after them what stands beside a cell. */
  announce(words: string): void {
    const lines = this.#box.hidden ? [] : [...this.#box.children].map(({ textContent }) => textContent);
    this.#status.textContent = [words, ...lines].join(' ').trim();
  }

  /** Shows one line beside a cell in which somebody types; nothing takes it away. */
  hint(visualRow: number, visualColumn: number, text: string | undefined): void {
    this.#hint.hidden = text === undefined || !this.#box.hidden;
    if (text === undefined) return;
    this.#hint.textContent = text;
    positionBeside(this.#hint, this.#hot.getCell(visualRow, visualColumn, true) ?? this.#hot.rootElement);
  }

  hide(): void {
    this.#box.hidden = true;
  }

  remove(): void {
    this.#box.remove();
    this.#status.remove();
    this.#hint.remove();
  }
}
