import type { LitElement, ReactiveController } from 'lit';
import type { CautionId } from '../../explain/notices/cautions.ts';
import { cautionsOf } from './cautions-template.ts';

/** Elements of a page that show cautions, in the order in which they came. */
const places = new Set<CautionsOnce>();

/** The cautions that an element is to show: where several are seen on a page, each caution stands in the first that has it. */
export class CautionsOnce implements ReactiveController {
  readonly #host: LitElement;
  readonly #sizes: ResizeObserver | undefined;
  #shown: readonly CautionId[] = [];
  #isSeen = false;

  constructor(host: LitElement) {
    this.#host = host;
    this.#sizes = globalThis.ResizeObserver && new ResizeObserver(() => this.#look());
    host.addController(this);
  }

  /** To be asked whenever the element is drawn. The tank's caution holds only where there is one. */
  of(hasTank: boolean): readonly CautionId[] {
    const all = [...places];
    const before = all.slice(0, Math.max(0, all.indexOf(this))).filter((each) => each.#host.checkVisibility());
    const elsewhere = new Set(before.flatMap((each) => each.#shown));
    const shown = cautionsOf(hasTank).filter((id) => !elsewhere.has(id));
    const isOther = shown.join() !== this.#shown.join();
    this.#shown = shown;
    if (isOther) for (const each of all.slice(all.indexOf(this) + 1)) each.#host.requestUpdate();
    return shown;
  }

  hostConnected(): void {
    places.add(this);
    this.#sizes?.observe(this.#host);
  }

  hostDisconnected(): void {
    places.delete(this);
    this.#sizes?.disconnect();
    this.#shown = [];
    this.#isSeen = false;
    CautionsOnce.#drawAll();
  }

  static #drawAll(): void {
    for (const each of places) each.#host.requestUpdate();
  }

  /** One that is hidden leaves its cautions to the others, and takes them back when it is seen again. */
  #look(): void {
    const isSeen = this.#host.checkVisibility();
    if (isSeen === this.#isSeen) return;
    this.#isSeen = isSeen;
    // What is drawn within an observer's call would call it again.
    requestAnimationFrame(() => CautionsOnce.#drawAll());
  }
}
