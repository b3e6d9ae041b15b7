import { describe, expect, it } from 'vitest';
import { dayNumber, dayNumberOf } from '../../src/engine/calendar.ts';
import { recordedYears } from '../../src/engine/rain/recorded-years.ts';
import { unpackedMm } from '../../src/plan/packed-days.ts';
import { packedYears } from '../../src/plan/packed-years.ts';
import { readPlan } from '../../src/plan/reading/read-plan.ts';
import { writePlan } from '../../src/plan/reading/write-plan.ts';
import { yearsOf } from '../../src/plan/to-garden/years.ts';
import { metricGarden, mixedGarden } from '../support/small-plans.ts';

/** Invented: rain on a third of the days, four digits of reference ET. */
function record(first: number, last: number) {
  const firstDay = dayNumberOf({ year: first, month: 0, dayOfMonth: 1 });
  const days = dayNumberOf({ year: last + 1, month: 0, dayOfMonth: 1 }) - firstDay;
  return {
    firstDay,
    rainMm: Float64Array.from({ length: days }, (_, day) => (day % 3 === 0 ? 1 + (day % 17) : 0)),
    etoMm: Float64Array.from({ length: days }, (_, day) => 3 + 2 * Math.sin(day / 58)),
    source: 'a station',
  };
}

const season = { firstDay: '2027-04-05', weeks: 30 };

describe('years in a plan', () => {
  it('are kept whole where they are few', () => {
    const years = packedYears({ ...record(2012, 2015), season });
    expect(years?.stretches).toHaveLength(1);
    expect(unpackedMm(years?.stretches[0]?.rain ?? '', 'metric')).toEqual(record(2012, 2015).rainMm);
  });

  it.each(['us', 'metric'] as const)(
    'thirty of them leave a plan in %s units under 60 KB, the season in each',
    (units) => {
      const years = packedYears({ ...record(1991, 2020), season });
      expect(years?.stretches).toHaveLength(1);
      const small = units === 'us' ? mixedGarden() : metricGarden();
      const [first] = small.zones;
      if (first === undefined) throw new Error('the garden has zones');
      // A garden of some 20 KB.
      const zones = Array.from({ length: 60 }, (_, at) => ({
        ...first,
        id: `zone-${at}`,
        plantings: first.plantings.map((each) => ({ ...each, id: `${each.id}-${at}` })),
      }));
      const gardenOf = (count: number) => ({ ...small, zones: zones.slice(0, count), log: {}, choices: {} });
      const most = zones.findIndex((_, at) => writePlan(gardenOf(at + 1)).length > 20_000);
      const base = gardenOf(most);
      expect(writePlan(base).length).toBeGreaterThan(18_000);
      const plan = { ...base, season, site: { ...base.site, years } };
      const text = writePlan(plan as typeof base);
      expect(text.length).toBeLessThan(60_000);
      const again = readPlan(text);
      expect(again.ok && again.plan.site.years).toEqual(years);
      const seen = yearsOf(years, units);
      const normals = { firstDay: dayNumber(season.firstDay), etoMm: new Float64Array(7 * season.weeks).fill(3) };
      expect(seen && recordedYears(seen, normals)).toMatchObject({ basis: 'record', years: 30 });
    },
  );

  it('of a season that runs into the next year, or nearly through two, are in order and none twice', () => {
    for (const long of [
      { firstDay: '2027-10-04', weeks: 30 },
      { firstDay: '2027-03-01', weeks: 104 },
    ]) {
      const years = packedYears({ ...record(1991, 2020), season: long });
      const seen = yearsOf(years, 'us');
      const normals = { firstDay: dayNumber(long.firstDay), etoMm: new Float64Array(7 * long.weeks).fill(3) };
      expect(seen && recordedYears(seen, normals)?.years).toBeGreaterThan(long.weeks === 30 ? 28 : 12);
      let free = Number.NEGATIVE_INFINITY;
      for (const { firstDay, rainMm } of seen?.stretches ?? []) {
        expect(firstDay).toBeGreaterThanOrEqual(free);
        free = firstDay + rainMm.length;
      }
    }
  });

  it('are none where no year has the whole season, or its rain', () => {
    expect(packedYears({ ...record(2020, 2020), season: { firstDay: '2027-10-04', weeks: 30 } })).toBeUndefined();
    const dry = record(2020, 2020);
    dry.rainMm.fill(Number.NaN);
    expect(packedYears({ ...dry, season })).toBeUndefined();
  });
});
