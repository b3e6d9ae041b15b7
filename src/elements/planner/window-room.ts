import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** Tells the style of a planner that fills the window how much of the window the page keeps above and below it, px. */
export class WindowRoom implements ReactiveController {
  readonly #host: ReactiveControllerHost & HTMLElement & { readonly fullPage: boolean };
  #frame = 0;
  // In the next frame: what is measured while sizes are told would be told once more.
  readonly #sizes = new ResizeObserver(() => {
    cancelAnimationFrame(this.#frame);
    this.#frame = requestAnimationFrame(() => this.#measure());
  });

  constructor(host: ReactiveControllerHost & HTMLElement & { readonly fullPage: boolean }) {
    this.#host = host;
    host.addController(this);
  }

  hostConnected(): void {
    // What stands above it changes the page's width or height with it.
    this.#sizes.observe(document.documentElement);
    this.#sizes.observe(document.body);
  }

  hostDisconnected(): void {
    this.#sizes.disconnect();
    cancelAnimationFrame(this.#frame);
  }

  #measure(): void {
    if (!this.#host.fullPage) return;
    const { top, bottom } = this.#host.getBoundingClientRect();
    const page = document.documentElement.getBoundingClientRect();
    const takenPx = Math.max(0, top - page.top) + Math.max(0, page.bottom - bottom);
    // A page with so much besides is not the planner's alone, and scrolls.
    const besidePx = takenPx < innerHeight / 2 ? Math.ceil(takenPx) : 0;
    this.#host.style.setProperty('--_beside', `${besidePx}px`);
  }
}
