import { describe, expect, it } from 'vitest';
import { wateringTimes } from '../../../../src/explain/watering-times.ts';
import { computeSeason } from '../../../../src/plan/compute-season.ts';
import type { Plan, PlanSupply } from '../../../../src/plan/schema/plan-schema.ts';
import { kindsOf, noticed } from '../../../support/noticed.ts';
import { oneBed, tomatoes, zone } from '../../../support/small-plans.ts';

/** Two alike beds that water on the same two days, one after another. */
function twoBeds(window: NonNullable<PlanSupply['window']>, change: Partial<Plan> = {}): Plan {
  const beds = ['one', 'two'].map((id) =>
    zone({
      id,
      name: id,
      wateringDays: ['mon', 'thu'],
      longestCycleMinutes: 600,
      plantings: [tomatoes({ id: `${id}-tomatoes` })],
    }),
  );
  const supply: PlanSupply = { sources: [{ name: 'Hose', flow: { kind: 'typed', flow: 1.5 } }], window };
  return oneBed({ zones: beds, supply, ...change });
}

const daysOf = (plan: Plan) => plan.zones.map(({ wateringDays }) => wateringDays as readonly string[]);
const longestDay = (plan: Plan) => Math.max(...wateringTimes(computeSeason(plan)).minutesNeeded);

/** So many hours that the longest day is a tenth too long. */
function tight(): Plan {
  return twoBeds({ hoursPerDay: longestDay(twoBeds({ hoursPerDay: 24 })) / 60 / 1.1 });
}

describe('a window that is too short', () => {
  it('is met by watering one zone on other days, with as many of them', () => {
    const plan = noticed(tight(), 'window-too-short').mended('other-days');
    expect(daysOf(plan)[1]).toEqual(['mon', 'thu']);
    expect(daysOf(plan)[0]).toHaveLength(2);
    expect(daysOf(plan)[0]).not.toContain('mon');
    expect(kindsOf(plan)).not.toContain('window-too-short');
  });

  it('is met by more days, and so shorter runs', () => {
    const { remedies, mended } = noticed(tight(), 'window-too-short');
    const plan = mended('more-days');
    expect(daysOf(plan)[0]?.length).toBeGreaterThan(2);
    expect(longestDay(plan)).toBeLessThan(longestDay(tight()));
    expect(remedies.filter(({ kind }) => kind === 'more-days')).toHaveLength(1);
  });

  it('is met by fewer minutes, which cost the plants water', () => {
    const { remedies, mended } = noticed(tight(), 'window-too-short');
    const fewer = remedies.find((each) => each.kind === 'fewer-minutes');
    expect(fewer).toMatchObject({ remaining: 0 });
    expect(fewer?.litresMore).toBeLessThan(0);
    expect(fewer?.minutesLess).toBeGreaterThan(0);
    const plan = mended('fewer-minutes');
    expect(longestDay(plan)).toBeLessThanOrEqual(longestDay(tight()) / 1.1 + 1e-6);
    const minutes = Object.values(plan.choices?.['one'] ?? {}).map((choice) => choice.minutes ?? Number.NaN);
    expect(minutes.length).toBeGreaterThan(0);
    for (const each of minutes) expect(each).toBe(Math.round(each));
  });

  it('leaves alone what really ran', () => {
    const ran = {
      ...twoBeds({ hoursPerDay: 0.8 }),
      log: { runs: { one: { '2027-06-14': 60 }, two: { '2027-06-14': 60 } } },
    };
    const { remedies, mended } = noticed(ran, 'window-too-short');
    const plan = mended('fewer-minutes');
    expect(plan.choices?.['one']?.['2027-06-14']).toBeUndefined();
    expect(plan.log).toEqual(ran.log);
    expect(remedies.find(({ kind }) => kind === 'fewer-minutes')?.remaining).toBeGreaterThan(0);
  });

  it('on weekdays on which no water may run is met by those on which it may', () => {
    const closed = twoBeds({ weekdays: ['tue', 'wed', 'sat'], hoursPerDay: 12 });
    const plan = noticed(closed, 'window-too-short').mended('other-days');
    for (const day of daysOf(plan)[0] ?? []) expect(['tue', 'wed', 'sat']).toContain(day);
  });
});
