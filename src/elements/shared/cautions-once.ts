import type { LitElement, ReactiveController } from 'lit';
import type { CautionId } from '../../explain/notices/cautions.ts';
import { cautionsOf } from './cautions-template.ts';

/** Elements of a page that show cautions, by the kind of element, in the order in which they came. */
const places = new Map<string, Set<CautionsOnce>>();

/** The cautions that an element is to show: where two of its kind are seen on a page, each caution stands in the first that has it. */
export class CautionsOnce implements ReactiveController {
  readonly #host: LitElement;
  #shown: readonly CautionId[] = [];

  constructor(host: LitElement) {
    this.#host = host;
    host.addController(this);
  }

  /** To be asked whenever the element is drawn. The tank's caution holds only where there is one. */
  of(hasTank: boolean): readonly CautionId[] {
    const alike = [...this.#alike];
    const before = alike.slice(0, Math.max(0, alike.indexOf(this))).filter((each) => each.#host.checkVisibility());
    const elsewhere = new Set(before.flatMap((each) => each.#shown));
    const shown = cautionsOf(hasTank).filter((id) => !elsewhere.has(id));
    const isOther = shown.join() !== this.#shown.join();
    this.#shown = shown;
    if (isOther) for (const each of alike.slice(alike.indexOf(this) + 1)) each.#host.requestUpdate();
    return shown;
  }

  hostConnected(): void {
    this.#alike.add(this);
  }

  hostDisconnected(): void {
    this.#alike.delete(this);
    this.#shown = [];
    for (const each of this.#alike) each.#host.requestUpdate();
  }

  get #alike(): Set<CautionsOnce> {
    const kind = this.#host.localName;
    const alike = places.get(kind) ?? new Set();
    places.set(kind, alike);
    return alike;
  }
}
