import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { afterOthers } from '../shared/in-slices.ts';

/**
 * Draws an element for the first time in stages, each a task of its own: code is slow the first time it runs, and the
 * page is not to stand still for all of it at once. What has been drawn once is drawn in one go from then on.
 */
export class Stages implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  #reached = 0;
  #until = 0;
  #next: Promise<void> | undefined;

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
  }

  /** How far there is something to draw; the first update comes before stage 1. */
  set until(stage: number) {
    this.#until = stage;
  }

  has(stage: number): boolean {
    return stage <= this.#reached;
  }

  /** Waits for the next stage; false where there was one. */
  async isDrawn(): Promise<boolean> {
    if (this.#next === undefined) return true;
    await this.#next;
    return false;
  }

  hostUpdated(): void {
    if (this.#reached >= this.#until || this.#next !== undefined) return;
    this.#next = new Promise((resolve) => {
      afterOthers(() => {
        this.#next = undefined;
        this.#reached += 1;
        this.#host.requestUpdate();
        resolve();
      });
    });
  }
}
