import { describe, expect, it } from 'vitest';
import { shutOffCalendar } from '../../../src/engine/mix/shut-off-calendar.ts';
import type { ZoneSeason } from '../../../src/engine/season/season.ts';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import { denseAndShrubs, denseBed, shrubLoops } from '../../support/dense-and-shrubs.ts';

function border(change: Parameters<typeof denseAndShrubs>[0] = {}): ZoneSeason {
  const plan = denseAndShrubs(change);
  const zones = plan.zones.map((zone) => ({ ...zone, plantings: [denseBed, { ...shrubLoops, shutOff: true }] }));
  const [zone] = computeSeason({ ...plan, zones }).zones;
  if (zone === undefined) throw new Error('there is no zone');
  return zone;
}

describe('shutOffCalendar', () => {
  /*
   * By hand, with the minutes and rates of compare-zone.test.ts. The shrubs use 0.02 in a day; a watering brings them m/60 x 0.6536 in.
   * On the morning of day 3 k of 3 days ask for: k = 1, day 7 alone, 0.14 in at once: 12.85 min; k = 2, days 5 and 7, 0.14 / 2: 6.43 min.
   * Week 1, 9 min: k = 2. Week 2, 20 min: k = 1. Week 3, 5 min: neither, so all three. Each time they are full on day 7.
   * Week 4: closed. Week 5, 22 min, 0.14 in down at the start: day 7 alone must bring 0.28 in: 25.7 min; days 5 and 7 half of it: k = 2.
   */
  it('opens on the fewest of the three watering days that are enough, week by week', () => {
    expect(shutOffCalendar(border(), 'shrubs')).toEqual([
      { firstWeek: 0, lastWeek: 0, openDays: 2, wateringDays: 3, openMask: 0b1010000 },
      { firstWeek: 1, lastWeek: 1, openDays: 1, wateringDays: 3, openMask: 0b1000000 },
      { firstWeek: 2, lastWeek: 2, openDays: 3, wateringDays: 3, openMask: 0b1010100 },
      { firstWeek: 4, lastWeek: 4, openDays: 2, wateringDays: 3, openMask: 0b1010000 },
    ]);
  });

  it('joins weeks that are alike, over a week in which the zone rests', () => {
    const choices = { border: { '2027-06-21': { minutes: 0 } } };
    expect(shutOffCalendar(border({ choices }), 'shrubs')[0]).toMatchObject({ firstWeek: 0, openDays: 2 });
    expect(shutOffCalendar(border({ choices: {} }), 'shrubs')).toEqual([
      { firstWeek: 0, lastWeek: 4, openDays: 2, wateringDays: 3, openMask: 0b1010000 },
    ]);
  });

  it('throws a RangeError for a planting of another zone', () => {
    expect(() => shutOffCalendar(border(), 'nobody')).toThrow(RangeError);
  });
});
