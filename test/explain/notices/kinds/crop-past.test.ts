import { describe, expect, it } from 'vitest';
import { computeSeason } from '../../../../src/plan/compute-season.ts';
import type { PlanPlanting } from '../../../../src/plan/schema/plan-schema.ts';
import { figuresOf, noticesOfKind } from '../../../support/notices.ts';
import { oneBed, tomatoes, zone } from '../../../support/small-plans.ts';

/** Apples in leaf from April 1 for 207 days (20, 70, 57 and 60): to October 24; the season ends on December 19, 56 days later. */
function daysPast(change: Partial<PlanPlanting>) {
  const need = {
    kind: 'crop',
    crop: 'apple-cherry-pear',
    plantedOn: '2027-04-01',
    stages: { initial: 20, development: 70, mid: 57, late: 60 },
  } as const;
  const plan = oneBed({
    season: { firstDay: '2027-03-29', weeks: 38 },
    zones: [zone({ plantings: [tomatoes({ need, ...change })] })],
  });
  const [notice] = noticesOfKind(computeSeason(plan), 'crop-past');
  return notice && figuresOf(notice)['daysPast'];
}

describe('a tree that stands after its last stage', () => {
  it('is told with all days on which it gets no water', () => {
    expect(daysPast({})).toBe(56);
  });

  it('is not told of months without leaves: seven days of October are left', () => {
    expect(daysPast({ leaflessMonths: [11, 12, 1, 2, 3] })).toBe(7);
    expect(daysPast({ leaflessMonths: [10, 11, 12, 1, 2, 3] })).toBeUndefined();
  });
});
