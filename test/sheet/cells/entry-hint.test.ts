import { describe, expect, it } from 'vitest';
import type { Plan } from '../../../src/plan/schema/plan-schema.ts';
import { oneBed } from '../../support/small-plans.ts';
import { cellOf, sheetOf } from '../sheet-of.ts';

/** The bed of a plan whose zone waters on two days of the week, with a timer of that step. */
function twiceAWeek(timerStepMinutes: number): Plan {
  const plan = oneBed();
  const zones = plan.zones.map((zone) => ({ ...zone, wateringDays: ['tue', 'sat'] as const, timerStepMinutes }));
  return { ...plan, zones } as Plan;
}

function hint(plan: Plan, text: string): string {
  const sheet = sheetOf(plan);
  return sheet.entryHint(cellOf(sheet, 'beds', '2027-06-14'), text).replaceAll(/[\s\u2068\u2069]+/g, ' ');
}

// By hand: 45 min on two days are 22.5 min each, which no timer of whole minutes can be set to.
describe('what is said while minutes are typed', () => {
  it('says the run of each day', () => {
    expect(hint(twiceAWeek(1), '46 min')).toContain('46 min in the week, 2 watering days of 23 min.');
  });

  it('says what the timer is set to where it cannot be set to what is typed, and why', () => {
    expect(hint(twiceAWeek(1), '45 min')).toContain(
      '46 min in the week, 2 watering days of 23 min. 45 minutes became 46 minutes: the timer runs in steps of 1 minute on each of 2 days.',
    );
    expect(hint(twiceAWeek(5), '44 min')).toContain('40 min in the week, 2 watering days of 20 min.');
  });

  it('is of no run where nothing is typed, and of the shortest where less than that is', () => {
    expect(hint(twiceAWeek(5), '0')).toContain('0 min in the week');
    expect(hint(twiceAWeek(5), '4 min')).toContain('10 min in the week, 2 watering days of 5 min.');
  });
});
