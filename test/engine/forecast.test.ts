/** What mornings expect of a forecast; its seasons by hand, in the garden of plain-garden.ts, watered on the first and the fourth day. */
import { describe, expect, it } from 'vitest';
import { ETO_METHODS } from '../../src/engine/climate/daily-eto.ts';
import { forecastOn, knownForecasts } from '../../src/engine/forecast.ts';
import type { Forecast, ForecastDay } from '../../src/engine/garden.ts';
import { runSeason } from '../../src/engine/season/run-season.ts';
import type { ZoneSeason } from '../../src/engine/season/season.ts';
import { zoneWeek } from '../../src/engine/season/zone-week.ts';
import { FIRST_DAY, plainGarden, plainZone } from '../support/plain-garden.ts';

const GROUND = { firstDay: 100, expectedEtoMm: new Float64Array(14).fill(5), runoffFraction: 0.2 };

const forecast = (issued: number, days: Readonly<Record<number, ForecastDay>>): Forecast => ({
  issued,
  days: new Map(Object.entries(days).map(([day, expected]) => [Number(day), expected])),
});

describe('what is known of the days to come', () => {
  it('is the rain that would soak in, and ETo over the normals', () => {
    const [known] = knownForecasts([forecast(100, { 101: { rainMm: 10, etoMm: 4 } })], GROUND);
    expect(known?.issued).toBe(0);
    expect([...(known?.days ?? [])]).toEqual([[1, { etoShare: 0.8, soakedMm: 8 }]]);
  });

  it.each([
    ['less than a fifth of the normals’ ETo', { rainMm: 0.99 }, 0],
    ['a fifth', { rainMm: 1 }, 0.8],
    ['less than a fifth of the forecast ETo', { rainMm: 1, etoMm: 5.1 }, 0],
    ['none', { rainMm: 0 }, 0],
    ['not said', { etoMm: 5 }, undefined],
  ])('has no rain that dries off again: %s', (_, day, soakedMm) => {
    expect(knownForecasts([forecast(100, { 101: day })], GROUND)[0]?.days.get(1)?.soakedMm).toBe(soakedMm);
  });

  it('has no day before its issue, and no share where the normals have no ETo', () => {
    const ground = { ...GROUND, expectedEtoMm: new Float64Array(14) };
    const [known] = knownForecasts([forecast(103, { 102: { rainMm: 9 }, 103: { etoMm: 4 } })], ground);
    expect([...(known?.days ?? [])]).toEqual([[3, { etoShare: 1, soakedMm: undefined }]]);
  });

  it('where the normals have no ETo dries none of its rain off, and the day that nobody reads uses none either', () => {
    const ground = { ...GROUND, expectedEtoMm: new Float64Array(14) };
    const [known] = knownForecasts([forecast(100, { 101: { rainMm: 0.5, etoMm: 4 } })], ground);
    expect([...(known?.days ?? [])]).toEqual([[1, { etoShare: 1, soakedMm: 0.4 }]]);
    const garden = plainGarden();
    const climate = { ...garden.site.climate, etoMm: new Array(12).fill(0) };
    const observed = {
      days: new Map(),
      weeks: new Map(),
      forecasts: [forecast(FIRST_DAY, { [FIRST_DAY + 1]: { etoMm: 4 } })],
    };
    const { weather, zones } = runSeason({ ...garden, site: { ...garden.site, climate }, observed });
    expect([weather.eto.mm[1], ETO_METHODS[weather.eto.method[1] as number]]).toEqual([0, 'normals']);
    expect(zoneWeek(zones[0] as ZoneSeason, 0)).toMatchObject({ demandLitres: 0, litres: 0 });
  });

  it('changes with a later issue day by day and figure by figure, in any order given', () => {
    const later = forecast(102, { 103: { rainMm: 20 }, 104: { etoMm: 10 } });
    const earlier = forecast(100, { 102: { rainMm: 5 }, 103: { rainMm: 10, etoMm: 4 } });
    const [first, second] = knownForecasts([later, earlier], GROUND);
    expect(first?.days.get(3)).toEqual({ etoShare: 0.8, soakedMm: 8 });
    expect(second?.days.get(2)).toEqual({ etoShare: 1, soakedMm: 4 });
    expect(second?.days.get(3)).toEqual({ etoShare: 0.8, soakedMm: 16 });
    expect(second?.days.get(4)).toEqual({ etoShare: 2, soakedMm: undefined });
    expect(first?.days.get(4)).toBeUndefined();
  });

  it('on a morning is the latest that was issued by then', () => {
    const known = knownForecasts([forecast(100, {}), forecast(104, {})], GROUND);
    expect([-1, 0, 3, 4, 13].map((day) => forecastOn(known, day)?.issued)).toEqual([undefined, 0, 0, 4, 4]);
  });
});

function weekWith(...forecasts: readonly Forecast[]) {
  const observed = { days: new Map(), weeks: new Map(), forecasts };
  const season = runSeason(plainGarden([plainZone({ wateringDays: 0b1001 })], { observed })).zones[0] as ZoneSeason;
  const { minutesDay0, minutesDay3, decidedMask } = zoneWeek(season, 0);
  return { minutes: [minutesDay0, minutesDay3], decidedMask };
}

const inWeek = (issued: number, days: Readonly<Record<number, ForecastDay>>) =>
  forecast(
    FIRST_DAY + issued,
    Object.fromEntries(Object.entries(days).map(([day, expected]) => [FIRST_DAY + Number(day), expected])),
  );

describe('a morning with a forecast', () => {
  // Without: 10 mm in two waterings, of which days 1 to 3 ask 7.5 mm of the second: 93.75 min.
  it.each([
    // Day 2 has 6 mm: of all four days 4 mm are left, of the last alone 2.5 mm: 31.25 min.
    ['waits for rain', inWeek(0, { 2: { rainMm: 6 } }), [31, 31]],
    // Day 2 takes 5 mm: days 1 to 3 ask for 10 mm of the second watering.
    ['expects a hot day', inWeek(0, { 2: { etoMm: 10 } }), [125, 125]],
    ['knows nothing of rain after its last watering', inWeek(0, { 5: { rainMm: 60 } }), [94, 94]],
    ['was issued days before', inWeek(-3, { 2: { rainMm: 6 } }), [31, 31]],
  ])('%s', (_, expected, minutes) => {
    expect(weekWith(expected)).toEqual({ minutes, decidedMask: 0b1 });
  });

  it('leaves earlier mornings as they were', () => {
    // Issued on day 1. Monday ran 94 min and filled the soil; on Thursday 7.5 mm go or are missing, less the 6 mm that day 3 is to have.
    expect(weekWith(inWeek(1, { 3: { rainMm: 6 } }))).toEqual({ minutes: [94, 19], decidedMask: 0b1001 });
  });
});
