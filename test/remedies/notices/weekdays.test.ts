import { describe, expect, it } from 'vitest';
import type { PlanSupply, PlanZone } from '../../../src/plan/schema/plan-schema.ts';
import { noticed } from '../../support/noticed.ts';
import { oneBed, tomatoes, zone } from '../../support/small-plans.ts';

/** Shallow roots in sand, from May to July: few days a week dry it out in all of them. */
const bedWith = (change: Partial<PlanZone>, supply: PlanSupply = { sources: [] }) =>
  oneBed({
    season: { firstDay: '2027-05-31', weeks: 12 },
    supply,
    zones: [zone({ soil: 'sand', plantings: [tomatoes({ rootDepth: 12 })], ...change })],
  });

describe('more watering days', () => {
  it('are those of the zone where all months have the same', () => {
    const { mended } = noticed(bedWith({ wateringDays: 1 }), 'few-days');
    const [changed] = mended('more-days').zones;
    expect(changed?.wateringDays.toString().split(',').length).toBeGreaterThan(1);
    expect(changed?.wateringDaysByMonth).toBeUndefined();
  });

  it('are given to the months that go short alone where months have their own', () => {
    const plan = bedWith({ wateringDays: 7, wateringDaysByMonth: { 7: 1 } });
    const { notice, remedies, mended } = noticed(plan, 'few-days');
    expect(notice.figures).toMatchObject({ fewestDays: 1, mostDays: expect.any(Number) });
    const [changed] = mended('more-days').zones;
    expect(changed?.wateringDays).toBe(7);
    expect(changed?.wateringDaysByMonth?.['7']?.toString().split(',').length).toBeGreaterThan(1);
    const months = remedies.flatMap((each) => (each.kind === 'more-days' ? each.wateringDays : []));
    expect(months[0]?.months).toContain(6);
  });

  it('are none on which a restriction lets no water run', () => {
    const restrictions = [{ weekdays: ['mon', 'wed', 'fri', 'sun'] as ('mon' | 'wed' | 'fri' | 'sun')[] }];
    const { remedies } = noticed(bedWith({ wateringDays: 1 }, { sources: [], restrictions }), 'few-days');
    const days = remedies.flatMap((each) => (each.kind === 'more-days' ? each.wateringDays : []));
    expect(days.length).toBeGreaterThan(0);
    for (const { weekdays } of days) {
      expect(weekdays.filter((weekday) => !restrictions[0]?.weekdays.includes(weekday as 'mon'))).toEqual([]);
    }
  });
});
