/** A few words beside a cell, said aloud as well: why an entry was refused, what a paste left out. */
import type Handsontable from 'handsontable/base';

const GAP_PX = 6;

export class CellCallout {
  readonly #hot: Handsontable.Core;
  readonly #box: HTMLElement;
  readonly #spoken: HTMLElement;

  constructor(hot: Handsontable.Core) {
    this.#hot = hot;
    const { rootDocument } = hot;
    this.#box = rootDocument.createElement('div');
    this.#box.className = 'runnel-callout';
    this.#box.hidden = true;
    this.#spoken = rootDocument.createElement('div');
    this.#spoken.className = 'runnel-spoken';
    // One polite region for all that the sheet has to say.
    this.#spoken.setAttribute('role', 'status');
    hot.rootPortalElement.append(this.#box, this.#spoken);
  }

  /** Shows lines of text beside a cell until the next thing happens there. */
  show(visualRow: number, visualColumn: number, lines: readonly string[]): void {
    const paragraphs = lines.map((line) => {
      const paragraph = this.#hot.rootDocument.createElement('p');
      paragraph.textContent = line;
      return paragraph;
    });
    this.#box.replaceChildren(...paragraphs);
    this.#box.hidden = false;
    this.#place(this.#hot.getCell(visualRow, visualColumn, true) ?? this.#hot.rootElement);
    this.say(lines.join(' '));
  }

  /** Says something without showing it. */
  say(words: string): void {
    this.#spoken.textContent = words;
  }

  hide(): void {
    this.#box.hidden = true;
  }

  remove(): void {
    this.#box.remove();
    this.#spoken.remove();
  }

  /** Below the cell, or above it where there is no room; inside the window either way. */
  #place(anchor: Element): void {
    const { rootWindow } = this.#hot;
    const at = anchor.getBoundingClientRect();
    const { offsetWidth: width, offsetHeight: height } = this.#box;
    const origin =
      this.#box.offsetParent?.getBoundingClientRect() ?? new DOMRect(-rootWindow.scrollX, -rootWindow.scrollY);
    const fitsBelow = at.bottom + GAP_PX + height <= rootWindow.innerHeight;
    const top = fitsBelow ? at.bottom + GAP_PX : at.top - GAP_PX - height;
    const left = Math.max(GAP_PX, Math.min(at.left, rootWindow.innerWidth - width - GAP_PX));
    this.#box.style.top = `${top - origin.top}px`;
    this.#box.style.left = `${left - origin.left}px`;
  }
}
