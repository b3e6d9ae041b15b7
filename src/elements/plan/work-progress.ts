import { nothing, type TemplateResult } from 'lit';
import type { Language } from '../../language/language.ts';
import type { Later, SeasonWork } from '../../store/plan-store.ts';
import { adoptStyles } from '../shared/adopt-styles.ts';
import { fetchPart } from '../shared/fetch-part.ts';
import { inSlices } from '../shared/in-slices.ts';
import type { ViewElement } from '../shared/view-element.ts';

type Strip = typeof import('./progress-strip.ts');

/** Time at a stretch for an edit, which somebody waits for, ms. */
const EDIT_SLICE_MS = 32;

/** Seasons that are computed a little at a time, and how far they have come. */
export class WorkProgress {
  readonly #host: ViewElement;
  readonly #ofOpenPlan: () => number;
  /** Zones done of the season that was begun last; undefined while nothing is computed. */
  #done: number | undefined;
  #zones = 0;
  #strip: Strip | undefined;
  #runs = 0;

  /** `zones`: how many the open plan has. */
  constructor(host: ViewElement, zones: () => number) {
    this.#host = host;
    this.#ofOpenPlan = zones;
  }

  /** Work on the open plan, to its end. */
  readonly later: Later = (steps) => {
    const end = this.#begin(this.#ofOpenPlan());
    inSlices({ steps, isWanted: () => true, onStep: this.#step, onEnd: end, sliceMs: EDIT_SLICE_MS });
  };

  /** A season of another plan, until somebody gives it up; left out, to its end. */
  until(signal?: AbortSignal): SeasonWork {
    return <Result>(steps: Generator<number, Result>, zones: number) => {
      const end = this.#begin(zones);
      return new Promise<Result | 'given-up'>((resolve, reject) => {
        inSlices({
          steps,
          isWanted: () => {
            if (signal?.aborted !== true) return true;
            resolve('given-up');
            return false;
          },
          onStep: this.#step,
          onEnd: resolve,
          onFault: reject,
        });
      }).finally(end);
    };
  }

  #begin(zones: number): () => void {
    this.#zones = zones;
    this.#runs += 1;
    this.#done = 0;
    void this.#fetch();
    return () => {
      this.#runs -= 1;
      if (this.#runs === 0) this.#done = undefined;
      this.#host.requestUpdate();
    };
  }

  readonly #step = (): void => {
    this.#done = (this.#done ?? 0) + 1;
    this.#host.requestUpdate();
  };

  /** Fetched when it is first wanted: short work is done before. */
  async #fetch(): Promise<void> {
    this.#strip ??= await fetchPart(() => import('./progress-strip.ts'));
    if (this.#strip !== undefined) adoptStyles(this.#host.renderRoot, this.#strip.progressStyles);
    this.#host.requestUpdate();
  }

  render(language: Language): TemplateResult | typeof nothing {
    if (this.#done === undefined || this.#strip === undefined) return nothing;
    return this.#strip.progressStrip({ done: this.#done, of: this.#zones, language });
  }
}
