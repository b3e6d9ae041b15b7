import { expect, it } from 'vitest';
import { lacksClimate, weeksWithoutClimate } from '../../../../src/explain/notices/kinds/no-climate.ts';
import { noticesOf } from '../../../../src/explain/notices/notices-of.ts';
import { computeSeason } from '../../../../src/plan/compute-season.ts';
import { emptyPlan } from '../../../../src/plan/empty-plan.ts';
import type { Plan, PlanClimate } from '../../../../src/plan/schema/plan-schema.ts';
import { noticesOfKind } from '../../../support/notices.ts';
import { oneBed, SAN_FRANCISCO, SEATTLE } from '../../../support/small-plans.ts';

/** A bed of tomatoes for 20 weeks from Monday 5 April 2027. */
const from5April = (climate: PlanClimate, change: Partial<Plan> = {}) =>
  computeSeason(
    oneBed({
      season: { firstDay: '2027-04-05', weeks: 20 },
      site: { latitude: 37.77, soil: 'loam', climate },
      ...change,
    }),
  );
const { climate: unfilled } = emptyPlan({ name: 'Allotment', units: 'us', firstDay: '2027-04-05', weeks: 20 }).site;

it('tells first of all that a climate is not filled in, though nothing then goes short', () => {
  const [first, ...others] = noticesOf(from5April(unfilled));
  expect(first).toMatchObject({ kind: 'no-climate', severity: 'danger', remedy: 'fill-climate' });
  expect(first).toMatchObject({
    firstWeek: 0,
    lastWeek: 19,
    figures: { etoMonths: 0, temperatureMonths: 0, days: 140 },
  });
  expect(lacksClimate(from5April(unfilled))).toBe(true);
  expect(others.map(({ kind }) => kind)).not.toContain('short');
});

it('takes temperatures of 0 all year for no climate either', () => {
  const zeros = Array.from({ length: 12 }, () => 0);
  const season = from5April({ source: 'Not given yet', minTemperature: zeros, maxTemperature: zeros, rain: zeros });
  expect(noticesOfKind(season, 'no-climate')).toHaveLength(1);
});

it('says nothing of a climate that is given, by ETo or by temperature', () => {
  expect(noticesOfKind(from5April(SAN_FRANCISCO), 'no-climate')).toEqual([]);
  expect(noticesOfKind(from5April({ ...SEATTLE }, { units: 'metric' }), 'no-climate')).toEqual([]);
});

// By FAO-56 equation 52 with (Tmean + 17.8) below 0, which is no evaporation: -30 and -22 °C all year.
it('says of a place that is too cold all year what is so, and that no month is missing', () => {
  const months = (celsius: number) => Array.from({ length: 12 }, () => celsius);
  const cold = {
    source: 'An invented ice cap',
    minTemperature: months(-30),
    maxTemperature: months(-22),
    rain: months(0),
  };
  const season = from5April(cold, { units: 'metric' });
  expect(noticesOfKind(season, 'no-climate')).toMatchObject([
    { severity: 'warning', figures: { etoMonths: 0, temperatureMonths: 12, days: 140, otherDays: 0 } },
  ]);
  expect(weeksWithoutClimate(season)).toEqual([]);
  expect(lacksClimate(season)).toBe(false);
});

it('does not say that a climate is missing where a season lies in its frozen months', () => {
  const eto = (SAN_FRANCISCO.eto ?? []).map((inches, month) => (month >= 3 && month <= 7 ? 0 : inches));
  const season = from5April({ ...SAN_FRANCISCO, eto });
  expect(noticesOfKind(season, 'no-climate')).toMatchObject([
    { severity: 'warning', figures: { etoMonths: 7, otherDays: 0 } },
  ]);
  expect(lacksClimate(season)).toBe(false);
});

it('warns of a month that was forgotten, in the weeks that lie in it whole', () => {
  const eto = SAN_FRANCISCO.eto?.with(5, 0) ?? [];
  // June 2027 is a Tuesday to a Wednesday: the weeks from 7 and 14 June and 21 June, ninth to eleventh after 5 April.
  expect(noticesOfKind(from5April({ ...SAN_FRANCISCO, eto }), 'no-climate')).toMatchObject([
    { severity: 'warning', weeks: [9, 10, 11], figures: { days: 21, otherDays: 119 } },
  ]);
  expect(weeksWithoutClimate(from5April({ ...SAN_FRANCISCO, eto }))).toEqual([9, 10, 11]);
});

it('lets what was observed count, though it was 0', () => {
  const weeks = Object.fromEntries(['2027-06-07', '2027-06-14', '2027-06-21'].map((day) => [day, { eto: 0 }] as const));
  const eto = SAN_FRANCISCO.eto?.with(5, 0) ?? [];
  expect(noticesOfKind(from5April({ ...SAN_FRANCISCO, eto }, { log: { weeks } }), 'no-climate')).toEqual([]);
});
