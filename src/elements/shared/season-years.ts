/** The season of a plan run over its years, once for all views that show it. */
import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { Season } from '../../engine/season/season.ts';
import { type YearBand, yearBand } from '../../engine/years/year-band.ts';
import { type YearOutcomes, yearSeasons } from '../../engine/years/year-seasons.ts';
import { planSeasonOf } from '../../store/plan-view.ts';
import type { PlanConsumer } from './plan-consumer.ts';
import { pageWorker } from './worker/page-worker.ts';
import { rainSharesOf } from './worker/rain-shares.ts';

export type YearsState =
  | { readonly step: 'none' }
  /** `share`: of the work, 0 to 1. */
  | { readonly step: 'busy'; readonly share: number }
  | { readonly step: 'done'; readonly band: YearBand; readonly outcomes: YearOutcomes };

const NONE: YearsState = { step: 'none' };
/** What a view shows by itself waits until nobody edits, ms. */
const STILL_MS = 500;
const LEAST_STEP = 0.05;

const states = new WeakMap<Season, YearsState>();
/** Of all views on the page. */
const connected = new Set<SeasonYears>();

export class SeasonYears implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  readonly #plan: PlanConsumer;
  #still: ReturnType<typeof setTimeout> | undefined;
  #awaited: Season | undefined;

  constructor(host: ReactiveControllerHost, plan: PlanConsumer) {
    this.#host = host;
    this.#plan = plan;
    host.addController(this);
  }

  hostConnected(): void {
    connected.add(this);
  }

  hostDisconnected(): void {
    connected.delete(this);
    this.#awaited = undefined;
    clearTimeout(this.#still);
  }

  /** Of the season that is open. */
  get state(): YearsState {
    const season = planSeasonOf(this.#plan.view);
    return (season && states.get(season)) ?? NONE;
  }

  /** Begins, once nothing has changed for a moment. */
  compareSoon(): void {
    const season = planSeasonOf(this.#plan.view);
    if (season === undefined || season === this.#awaited || states.has(season)) return;
    this.#awaited = season;
    clearTimeout(this.#still);
    this.#still = setTimeout(() => {
      if (planSeasonOf(this.#plan.view) === season) this.compare();
    }, STILL_MS);
  }

  /** Begins, where nobody has; given up once no view shows the season. */
  compare(): void {
    const { plan } = this.#plan.view;
    const season = planSeasonOf(this.#plan.view);
    if (plan === undefined || season === undefined || states.has(season)) return;
    const views = () => [...connected].filter((each) => planSeasonOf(each.#plan.view) === season);
    const show = (state: YearsState) => {
      states.set(season, state);
      for (const view of views()) view.#host.requestUpdate();
    };
    show({ step: 'busy', share: 0 });
    let shown = 0;
    pageWorker.do({
      name: 'years',
      args: [plan, rainSharesOf(season)],
      steps: () => yearSeasons(season),
      isWanted: () => {
        const isWanted = views().length > 0;
        if (!isWanted) states.delete(season);
        return isWanted;
      },
      onStep: (share) => {
        if (share - shown < LEAST_STEP) return;
        shown = share;
        show({ step: 'busy', share });
      },
      onEnd: (outcomes) => {
        const band = yearBand(outcomes);
        show(band === undefined ? NONE : { step: 'done', band, outcomes });
      },
    });
  }
}
