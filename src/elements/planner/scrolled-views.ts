import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** What a ring around something or a rounded size may reach beyond a view, px. */
const SPARE_PX = 16;

/**
 * Marks the views that do not fit into their planner. On a phone the page scrolls, but where a host gives the planner a height its views
 * would lie over what stands below it: these scroll by themselves.
 */
export class ScrolledViews implements ReactiveController {
  readonly #host: ReactiveControllerHost & HTMLElement;
  readonly #sizes = new ResizeObserver(() => {
    for (const view of this.#host.querySelectorAll('.runnel-planner__view')) {
      view.classList.toggle('runnel-planner__view-scrolled', view.scrollHeight > view.clientHeight + SPARE_PX);
    }
  });

  constructor(host: ReactiveControllerHost & HTMLElement) {
    this.#host = host;
    host.addController(this);
  }

  hostUpdated(): void {
    for (const element of this.#host.querySelectorAll('.runnel-planner__view, .runnel-planner__view > *')) {
      this.#sizes.observe(element);
    }
  }

  hostDisconnected(): void {
    this.#sizes.disconnect();
  }
}
