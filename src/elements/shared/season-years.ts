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

interface Work {
  state: YearsState;
  readonly watchers: Set<SeasonYears>;
}

const NONE: YearsState = { step: 'none' };
/** What a view shows by itself waits until nobody edits, ms. */
const STILL_MS = 500;
const LEAST_STEP = 0.05;

const works = new WeakMap<Season, Work>();

export class SeasonYears implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  readonly #plan: PlanConsumer;
  #isConnected = false;
  #still: ReturnType<typeof setTimeout> | undefined;
  #awaited: Season | undefined;

  constructor(host: ReactiveControllerHost, plan: PlanConsumer) {
    this.#host = host;
    this.#plan = plan;
    host.addController(this);
  }

  hostConnected(): void {
    this.#isConnected = true;
  }

  hostDisconnected(): void {
    this.#isConnected = false;
    this.#awaited = undefined;
    clearTimeout(this.#still);
  }

  /** Of the season that is open. */
  get state(): YearsState {
    const season = planSeasonOf(this.#plan.view);
    const work = season && works.get(season);
    work?.watchers.add(this);
    return work?.state ?? NONE;
  }

  /** Begins, once nothing has changed for a moment. */
  compareSoon(): void {
    const season = planSeasonOf(this.#plan.view);
    if (season === undefined || season === this.#awaited || works.has(season)) return;
    this.#awaited = season;
    clearTimeout(this.#still);
    this.#still = setTimeout(() => {
      if (planSeasonOf(this.#plan.view) === season) this.compare();
    }, STILL_MS);
  }

  /** Begins, a little at a time; given up where another season comes. */
  compare(): void {
    const { plan } = this.#plan.view;
    const season = planSeasonOf(this.#plan.view);
    if (plan === undefined || season === undefined || works.has(season)) return;
    const work: Work = { state: { step: 'busy', share: 0 }, watchers: new Set([this]) };
    works.set(season, work);
    const show = (state: YearsState) => {
      work.state = state;
      for (const watcher of work.watchers) watcher.#host.requestUpdate();
    };
    show(work.state);
    let shown = 0;
    pageWorker.do({
      name: 'years',
      args: [plan, rainSharesOf(season)],
      steps: () => yearSeasons(season),
      isWanted: () => {
        const isWanted = [...work.watchers].some((watcher) => watcher.#shows(season));
        if (!isWanted) works.delete(season);
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

  #shows(season: Season): boolean {
    return this.#isConnected && planSeasonOf(this.#plan.view) === season;
  }
}
