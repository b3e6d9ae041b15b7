import { describe, expect, it } from 'vitest';
import { dayNumber } from '../../../src/engine/calendar.ts';
import { DRY_DOWN_DAYS } from '../../../src/engine/plants/dry-down.data.ts';
import type { PlanPlanting } from '../../../src/plan/schema/plan-schema.ts';
import { frozenMonthsOf, restOf } from '../../../src/plan/to-garden/rest.ts';
import { shrubs, tomatoes } from '../../support/small-plans.ts';

const [from, to] = [dayNumber('2027-11-10'), dayNumber('2028-03-20')];
const restIn = (planting: PlanPlanting, frozenMonths = 0) => restOf(planting, { from, to, lastDay: to, frozenMonths });
const day = dayNumber;

describe('days on which a planting asks for no water', () => {
  it('are none as a rule', () => {
    expect(restIn(shrubs())).toBeUndefined();
  });

  it('are its leafless months, those in a row as one', () => {
    expect(restIn(shrubs({ leaflessMonths: [12, 1, 3] }))).toEqual([
      { from: day('2027-12-01'), to: day('2028-01-31'), kind: 'leafless' },
      { from: day('2028-03-01'), to, kind: 'leafless' },
    ]);
  });

  it('are months whose lowest temperatures are normally below freezing, leafless or not', () => {
    const frozen = frozenMonthsOf([-7, -5, -1, 3, 8, 12, 15, 14, 10, 5, 0, -4]);
    expect(restIn(shrubs({ leaflessMonths: [12] }), frozen)).toEqual([{ from: day('2027-12-01'), to, kind: 'frozen' }]);
    expect(frozenMonthsOf(undefined)).toBe(0);
  });

  it('are the last 14 days of onions and garlic before they are lifted: common practice, no source', () => {
    expect(DRY_DOWN_DAYS).toEqual({ 'onion-dry': 14, garlic: 14 });
    const onions = tomatoes({ need: { kind: 'crop', crop: 'onion-dry', plantedOn: '2027-11-10' } });
    expect(restIn(onions)).toEqual([{ from: day('2028-03-07'), to, kind: 'dry-down' }]);
    expect(restIn({ ...onions, dryDownDays: 7 })).toEqual([{ from: day('2028-03-14'), to, kind: 'dry-down' }]);
    expect(restIn({ ...onions, dryDownDays: 0 })).toBeUndefined();
  });

  it('are counted back from its own last day, after the season’s', () => {
    const onions = tomatoes({ need: { kind: 'crop', crop: 'onion-dry', plantedOn: '2027-11-10' } });
    const later = (lastDay: number) => restOf(onions, { from, to, lastDay, frozenMonths: 0 });
    expect(later(to + 10)).toEqual([{ from: day('2028-03-17'), to, kind: 'dry-down' }]);
    expect(later(to + 14)).toBeUndefined();
  });

  it('are typed for any planting that is pulled on a day', () => {
    expect(restIn(shrubs({ dryDownDays: 7 }))).toBeUndefined();
    const pulled = shrubs({ dryDownDays: 7, inGround: { to: '2028-03-20' } });
    expect(restIn(pulled)).toEqual([{ from: day('2028-03-14'), to, kind: 'dry-down' }]);
  });
});
