/** How long a page is held up while remedies are worked out. */
import { expect } from 'chai';
import { SLICE_MS } from '../../../src/elements/shared/in-slices.ts';
import { noticesOf } from '../../../src/explain/notices/notices-of.ts';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import { searchRemedies } from '../../../src/remedies/notices/remedies-of.ts';
import { mixedGarden } from '../../support/small-plans.ts';
import { TROUBLES } from '../../support/troubled-plans.ts';

describe('working remedies out', () => {
  /** Other work on the machine only ever adds to a time: a step's shortest of several searches is nearest to its own. */
  const MOST_SEARCHES = 40;
  const MOST_MS = 50 - SLICE_MS;

  it('takes steps that leave the page under 50 ms a task', function () {
    this.timeout(170_000);
    const plans = [...TROUBLES.map(([, planOf]) => planOf()), mixedGarden()];
    const longest = plans.flatMap((plan) => {
      const season = computeSeason(plan);
      return noticesOf(season).map((notice) => {
        let times = stepTimes({ plan, season, notice });
        for (let search = 1; search < MOST_SEARCHES && Math.max(...times) >= MOST_MS; search++) {
          const again = stepTimes({ plan, season, notice });
          times = times.map((time, step) => Math.min(time, again[step] ?? time));
        }
        return Math.max(...times);
      });
    });
    expect(longest.length).to.be.greaterThan(TROUBLES.length);
    expect(Math.max(...longest), 'longest step, ms').to.be.below(MOST_MS);
  });
});

/** Milliseconds of each step of a search. */
function stepTimes(of: Parameters<typeof searchRemedies>[0]): readonly number[] {
  const search = searchRemedies(of);
  const times: number[] = [];
  for (let isDone = false; !isDone; ) {
    const start = performance.now();
    isDone = search.next().done === true;
    times.push(performance.now() - start);
  }
  return times;
}
