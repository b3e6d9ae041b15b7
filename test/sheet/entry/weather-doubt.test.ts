/** Rain that may be a slip of the finger is asked about once; it is taken where it is entered again. */
import { describe, expect, it } from 'vitest';
import { dayNumber } from '../../../src/engine/calendar.ts';
import { formatFor } from '../../../src/language/format/format.ts';
import { readerFor } from '../../../src/language/reader.ts';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import { editDoubt, rainDoubt } from '../../../src/sheet/entry/doubt.ts';
import { oneBed } from '../../support/small-plans.ts';

const plan = oneBed();
const season = computeSeason(plan);
const format = formatFor(readerFor('en-US', plan.units));
const of = (mm: number, change: object = {}) =>
  rainDoubt(
    { mm, firstDay: dayNumber('2027-06-14'), days: 7, today: undefined, ...change },
    season,
    format,
  )?.replaceAll('\u00a0', ' ');

describe('rain that was read', () => {
  it('is asked about from 8 in on, and far above the most of all years of its month', () => {
    expect(of(203.2)).toMatch(
      /^8 inches in a week is a lot: the most in the years that this plan reckons with is 1.19 inches, in June\.$/,
    );
    expect(of(203.2, { days: 1 })).toMatch(/in a day is a lot/);
    expect(of(50)).toBeUndefined();
    const { years, rainMm } = season.weather.years();
    const first = dayNumber('2027-06-01') - season.weather.firstDay;
    const mostMm = Math.max(...rainMm.subarray(first * years, (first + 30) * years));
    expect(of(Math.max(50.1, 1.5 * mostMm + 0.1), { days: 1 })).toBeDefined();
    expect(of(Math.max(50, 1.5 * mostMm - 0.1), { days: 1 })).toBeUndefined();
  });

  it('is asked about where its day is to come, once the season is on', () => {
    expect(of(5, { today: dayNumber('2027-06-13') })).toBe('June 14 is still to come.');
    expect(of(5, { today: dayNumber('2027-06-14') })).toBeUndefined();
    expect(of(5, { today: season.weather.firstDay - 1 })).toBeUndefined();
  });

  it('of a sheet’s edits is told with how to save it', () => {
    const context = { plan, season, format, today: undefined };
    const rain = (depth: number) => ({ type: 'set-week-rain', week: '2027-06-14', rain: depth }) as const;
    expect(editDoubt(rain(9), context)).toMatch(/is a lot.*Type it once more to save it\.$/);
    expect(editDoubt(rain(1), context)).toBeUndefined();
    expect(editDoubt({ type: 'together', action: 'paste-cells', edits: [rain(1), rain(9)] }, context)).toBeDefined();
  });
});
