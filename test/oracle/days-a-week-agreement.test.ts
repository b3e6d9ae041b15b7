/** Engine and oracle on how often each zone of random gardens wants water, month by month, to a millionth. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { daysAWeek as engineDaysAWeek } from '../../src/engine/application/days-a-week.ts';
import type { Garden, SupplyRestriction } from '../../src/engine/garden.ts';
import { runSeason } from '../../src/engine/season/run-season.ts';
import { dayAround, some } from '../support/garden-numbers.ts';
import { arbitraryLimitedGarden } from '../support/limited-garden.ts';
import { allowedIn, daysAWeek } from './days-a-week.ts';
import { monthMasks } from './month-masks.ts';
import { NearTies } from './near-ties.ts';
import { plantingFacts } from './planting-facts.ts';
import { wateringDayCount } from './watering-days.ts';
import { weatherOf } from './weather.ts';
import { yearsOf } from './years.ts';

/** Days on which water may run, some of them in a part of the season alone. */
const gardens = arbitraryLimitedGarden({ mostWeeks: 30 }).chain((garden) => {
  const day = dayAround(garden.span, 20);
  const restriction = fc
    .record({
      from: some(day),
      to: some(day),
      weekdays: fc.oneof(fc.constantFrom(42, 0), fc.integer({ min: 1, max: 127 })),
    })
    .map((given): SupplyRestriction => given);
  return fc.array(restriction, { maxLength: 2 }).map((restrictions): Garden => {
    // What rain is counted on does not matter here, and by this method it is known at once.
    const site = { ...garden.site, rain: { ...garden.site.rain, method: 'fraction' as const } };
    return { ...garden, site, supply: { ...garden.supply, restrictions } };
  });
});

const MONTHS = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11];

function byOracle(garden: Garden) {
  const weather = weatherOf(garden);
  return garden.zones.flatMap((zone) => {
    const around = { garden, zone, weather, years: yearsOf(garden, weather), ties: new NearTies() };
    const facts = zone.plantings.map((planting) => plantingFacts(around, planting));
    return MONTHS.flatMap((month) => {
      const allowed = allowedIn(garden, month);
      const planned = monthMasks(zone, garden.span)(month);
      const found = daysAWeek(garden, zone, facts, { month, allowed, planned });
      const allowedDays = wateringDayCount(allowed);
      const masks = { allowedDays, allowedMask: allowed, plannedMask: planned };
      return found === undefined ? [] : [{ zoneId: zone.id, month, ...masks, ...found }];
    });
  });
}

function byEngine(garden: Garden) {
  const places = new Map(garden.zones.map(({ id }, place) => [id, place]));
  const place = ({ zoneId, month }: { zoneId: string; month: number }) => 12 * (places.get(zoneId) ?? 0) + month;
  return engineDaysAWeek(runSeason(garden)).toSorted((one, other) => place(one) - place(other));
}

describe('engine and oracle agree on how often', () => {
  it('each zone of 250 random gardens wants water in each month', { timeout: 120_000 }, () => {
    const reached = { months: 0, notEnough: 0, fewer: 0, starts: 0, noDay: 0, refill: 0 };
    let withoutRoom = 0;
    for (const garden of fc.sample(gardens, { seed: 653, numRuns: 250 })) {
      const oracle = byOracle(garden);
      expect(byEngine(garden)).toEqual(
        oracle.map(({ waterAtHandMm, dailyUseMm, ...whole }) => ({
          ...whole,
          waterAtHandMm: expect.closeTo(waterAtHandMm, 6),
          dailyUseMm: expect.closeTo(dailyUseMm, 6),
        })),
      );
      const refills = new Set(
        garden.zones.flatMap(({ plantings }) =>
          plantings.flatMap(({ id, watering }) => (watering === 'refill' ? [id] : [])),
        ),
      );
      const count = (is: (of: (typeof oracle)[number]) => boolean) => oracle.filter(is).length;
      reached.months += oracle.length;
      reached.fewer += count((of) => of.daysAWeek < of.allowedDays);
      reached.notEnough += count((of) => !of.isEnough);
      reached.starts += count((of) => of.startsADay > 1);
      reached.noDay += count((of) => of.allowedDays === 0);
      reached.refill += count((of) => refills.has(of.plantingId));
      withoutRoom += count((of) => of.waterAtHandMm === 0);
    }
    expect(Object.entries(reached).filter(([, times]) => times <= 20)).toEqual([]);
    expect(withoutRoom).toBeGreaterThan(0);
  });
});
