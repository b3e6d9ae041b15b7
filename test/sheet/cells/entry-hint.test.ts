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

  it('says so where the timer cannot be set to it, and what comes out even', () => {
    expect(hint(twiceAWeek(1), '45 min')).toContain(
      '2 watering days of 22.5 min. The timer steps by 1 min: type 44 min or 46 min.',
    );
    expect(hint(twiceAWeek(5), '45 min')).toContain('The timer steps by 5 min: type 40 min or 50 min.');
  });

  it('names no total of nothing', () => {
    expect(hint(twiceAWeek(5), '4 min')).toContain('type 10 min.');
  });
});
