import { describe, expect, it } from 'vitest';
import { zoneRuns } from '../../src/engine/season/zone-runs.ts';
import { nearestSettable, settableRun } from '../../src/explain/settable-minutes.ts';
import { computeSeason } from '../../src/plan/compute-season.ts';
import type { Plan, PlanZone } from '../../src/plan/schema/plan-schema.ts';
import { oneBed } from '../support/small-plans.ts';

/** The bed, watered on three days of the week by a timer of 5 min, with minutes by hand in one week. */
function bed(change: Partial<PlanZone>, minutes?: number) {
  const plan = oneBed();
  const zones = plan.zones.map((zone) => ({
    ...zone,
    wateringDays: ['mon', 'wed', 'sat'],
    timerStepMinutes: 5,
    longestCycleMinutes: 60,
    ...change,
  }));
  const choices = minutes === undefined ? undefined : { beds: { '2027-06-14': { minutes } } };
  const season = computeSeason({ ...plan, zones, choices } as Plan);
  const [zone] = season.zones;
  if (zone === undefined) throw new Error('no zone');
  return { zone, week: Math.floor((new Date('2027-06-14').getTime() / 86_400_000 - season.garden.span.firstDay) / 7) };
}

// By hand: a step of 5 min on three days makes 15 min of the week.
describe('minutes of a week', () => {
  it.each([
    ['stay where the timer can be set to them', 105, 105, 1],
    ['become the nearest that it can be set to', 100, 105, 1],
    ['of two equally near the longer', 97.5, 105, 1],
    ['are the shortest run where they are less', 1, 15, 1],
    ['are nothing where nothing is wanted', 0, 0, 0],
  ])('%s', (_name, typed, minutes, cycles) => {
    const { zone, week } = bed({});
    expect(settableRun(zone, week, typed)).toEqual({ minutes, cycles, days: 3 });
  });

  // 35 min a day in cycles of at most 20 are two of 17.5; the nearest equal cycles of whole steps are two of 20 or of 15, both 5 min away.
  it('fall in equal cycles of whole steps', () => {
    const { zone, week } = bed({ longestCycleMinutes: 20, startsADay: 4 });
    expect(settableRun(zone, week, 105)).toEqual({ minutes: 120, cycles: 2, days: 3 });
    expect(settableRun(zone, week, 102)).toEqual({ minutes: 90, cycles: 2, days: 3 });
  });

  it('are what the season then runs, in as many cycles', () => {
    for (let typed = 5; typed <= 400; typed += 23) {
      const { zone, week } = bed({ longestCycleMinutes: 20, startsADay: 4 });
      const run = settableRun(zone, week, typed);
      const after = bed({ longestCycleMinutes: 20, startsADay: 4 }, run.minutes);
      const [ran, other] = zoneRuns(after.zone, week);
      expect(other).toBeUndefined();
      expect(ran).toMatchObject({ minutes: run.minutes / 3, cycles: run.cycles });
      expect((run.minutes / 3 / run.cycles) % 5, `${typed} min`).toBe(0);
      expect(nearestSettable(after.zone, week)).toBeUndefined();
    }
  });

  it('of an older plan that the timer cannot be set to have a nearest that it can', () => {
    const { zone, week } = bed({}, 100);
    expect(nearestSettable(zone, week)).toEqual({ minutes: 105, cycles: 1, days: 3 });
    expect(nearestSettable(zone, week + 1)).toBeUndefined();
  });
});
