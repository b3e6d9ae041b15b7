import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { SheetView } from '../../sheet/sheet-view.ts';
import { RunnelViewEvent } from '../shared/events/view-event.ts';

/** Announces to the plan around a grid what its sheet shows, whenever that changes, and that the grid is gone. */
export class ViewAnnouncer implements ReactiveController {
  readonly #host: ReactiveControllerHost & HTMLElement;
  readonly #view: () => SheetView | undefined;
  #announced: SheetView | undefined;
  #ended = new AbortController();

  constructor(host: ReactiveControllerHost & HTMLElement, view: () => SheetView | undefined) {
    this.#host = host;
    this.#view = view;
    host.addController(this);
  }

  hostUpdated(): void {
    const view = this.#host.isConnected ? this.#view() : undefined;
    if (view === this.#announced) return;
    const before = this.#ended;
    this.#ended = new AbortController();
    this.#announced = view;
    if (view !== undefined) this.#host.dispatchEvent(new RunnelViewEvent(view, this.#ended.signal));
    before.abort();
  }

  hostDisconnected(): void {
    this.#announced = undefined;
    this.#ended.abort();
  }
}
