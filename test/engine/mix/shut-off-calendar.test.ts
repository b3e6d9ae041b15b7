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
   * Week 1, 10 min, 0.1089 in: one watering on day 7 leaves 0.14 - 0.1089 = 0.031 in: too little. Days 5 and 7: full after each: k = 2.
   * Week 2, 20 min, 0.2179 in: day 7 alone is enough: k = 1.
   * Week 3, 5 min, 0.0545 in: days 5 and 7 leave 0.14 - 0.109 = 0.031 in; all three suffice (0.06, 0.0455, 0.04 in before each): k = 3.
   * Week 4: closed. Week 5, 23 min, 0.2505 in, 0.14 in down at the start: day 7 alone leaves 0.28 - 0.2505 = 0.029 in; days 5 and 7 are enough: k = 2.
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
