import type { PageWorker, WorkerWork } from '../../../../src/elements/shared/worker/page-worker.ts';
import { rainSharesOf } from '../../../../src/elements/shared/worker/rain-shares.ts';
import { type YearOutcomes, yearSeasons } from '../../../../src/engine/years/year-seasons.ts';
import { computeSeason } from '../../../../src/plan/compute-season.ts';
import { oneBed } from '../../../support/small-plans.ts';

export const plan = oneBed();
export const season = computeSeason(plan);

export interface YearsTold {
  readonly outcomes: YearOutcomes;
  /** Of the work, as they were told. */
  readonly shares: readonly number[];
  /** Whether they were computed on the page. */
  readonly onPage: boolean;
}

/** The years of `season`, asked of a page's worker. */
export function yearsIn(page: PageWorker, change: Partial<WorkerWork<'years'>> = {}): Promise<YearsTold> {
  const shares: number[] = [];
  let onPage = false;
  return new Promise((resolve, reject) =>
    page.do({
      name: 'years',
      args: [plan, rainSharesOf(season)],
      steps() {
        onPage = true;
        return yearSeasons(season);
      },
      isWanted: () => true,
      onStep: (share) => shares.push(share),
      onEnd: (outcomes) => resolve({ outcomes, shares, onPage }),
      onFault: reject,
      ...change,
    }),
  );
}
