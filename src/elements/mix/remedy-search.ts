/** Looks for remedies in slices, so that the page never waits for it. */
import type { ReactiveController } from 'lit';
import { type MixRemedies, type MixSearchInput, searchMixRemedies } from '../../remedies/mix/search.ts';
import { inSlices } from '../shared/in-slices.ts';
import type { ViewElement } from '../shared/view-element.ts';

export class RemedySearch implements ReactiveController {
  /** Candidates worked out so far. */
  tried = 0;
  /** Undefined while the search goes on. */
  found: MixRemedies | undefined;

  readonly #host: ViewElement;
  #input: MixSearchInput | undefined;
  #steps: Generator<number, MixRemedies> | undefined;

  constructor(host: ViewElement) {
    this.#host = host;
    host.addController(this);
  }

  /** Goes on with the search for this, or begins it anew; what was looked for before is given up. */
  for(input: MixSearchInput): void {
    const before = this.#input;
    if (
      before?.plan === input.plan &&
      before.season === input.season &&
      before.zoneId === input.zoneId &&
      before.catalogue === input.catalogue
    ) {
      return;
    }
    this.stop();
    this.#input = input;
    this.#begin(input);
  }

  stop(): void {
    this.#steps = undefined;
    this.#input = undefined;
    this.found = undefined;
    this.tried = 0;
  }

  hostDisconnected(): void {
    this.stop();
  }

  #begin(input: MixSearchInput): void {
    const steps = searchMixRemedies(input);
    this.#steps = steps;
    inSlices({
      steps,
      isWanted: () => this.#steps === steps,
      onStep: (tried) => {
        this.tried = tried;
      },
      onEnd: (found) => {
        this.found = found;
        this.#host.requestUpdate();
      },
      onFault: (error) => this.#host.fail(error),
    });
  }
}
