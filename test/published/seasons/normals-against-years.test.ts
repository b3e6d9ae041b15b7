/**
 * What the normals let expect, against seasons replayed by day: four real years of two cities. Water is net irrigation plus what was drawn
 * from the soil, as a share of the season's ETc. The limits are what Runnel promises; the table that is printed stands in ../README.md.
 */
import { describe, expect, it } from 'vitest';
import type { GardenSite, ObservedWeather, ObservedWeek } from '../../../src/engine/garden-weather.ts';
import { CITIES, type CityDay, dailyWeather, normalsOf, readingsOf, recordOf, YEARS } from './daily-weather.ts';
import { POT_AND_SHRUB, SEVEN_PLANTINGS, SPAN, seasonWater, type TriedPlanting } from './seven-plantings.ts';

const RAIN = { method: 'balance', fraction: 0.25, runoffFraction: 0 } as const;
const NOTHING_READ: ObservedWeather = { days: new Map(), weeks: new Map() };

interface Row {
  readonly city: string;
  readonly name: string;
  /** mm, from the normals, from the years themselves, and the mean of the seasons replayed by day. */
  readonly normalsMm: number;
  readonly recordMm: number;
  readonly replayedMm: number;
  /** Shares of the season's ETc. */
  readonly normals: number;
  readonly record: number;
  /** Mean of the years, rain by week's totals against rain by day. */
  readonly totals: number;
}

const rows = CITIES.flatMap((city) => {
  const days = dailyWeather(city);
  const site = { ...city, climate: normalsOf(days), rain: RAIN };
  return [...SEVEN_PLANTINGS, ...POT_AND_SHRUB].map((tried) => rowOf(city.name, tried, site, days));
});

function rowOf(city: string, tried: TriedPlanting, site: GardenSite, days: readonly CityDay[]): Row {
  const normals = seasonWater(tried, site, NOTHING_READ);
  const record = seasonWater(tried, { ...site, years: recordOf(days) }, NOTHING_READ);
  let replayedMm = 0;
  let totals = 0;
  for (const year of YEARS) {
    const read = readingsOf(days, year, SPAN);
    const byDay = seasonWater(tried, site, { days: read, weeks: new Map() });
    const byWeek = seasonWater(tried, site, inTotals(read));
    replayedMm += byDay.waterMm / YEARS.length;
    totals += Math.abs(byWeek.waterMm - byDay.waterMm) / byDay.etcMm / YEARS.length;
  }
  const share = (waterMm: number) => (waterMm - replayedMm) / normals.etcMm;
  return {
    city,
    name: tried.name,
    normalsMm: normals.waterMm,
    recordMm: record.waterMm,
    replayedMm,
    normals: share(normals.waterMm),
    record: share(record.waterMm),
    totals,
  };
}

/** Rain as a total of each week, ETo by day as before. */
function inTotals(read: ReturnType<typeof readingsOf>): ObservedWeather {
  const weeks = new Map<number, ObservedWeek>();
  for (const [day, { rainMm }] of read) {
    const first = SPAN.firstDay + 7 * Math.floor((day - SPAN.firstDay) / 7);
    weeks.set(first, { rainMm: (weeks.get(first)?.rainMm ?? 0) + rainMm });
  }
  return { days: new Map([...read].map(([day, { etoMm }]) => [day, { etoMm }])), weeks };
}

const percent = (value: number) => (100 * value).toFixed(1).padStart(6);
const mm = (value: number) => value.toFixed(0).padStart(5);

function greatest(field: 'normals' | 'record' | 'totals'): number {
  return Math.max(...rows.map((row) => Math.abs(row[field])));
}

function average(field: 'normals' | 'record' | 'totals'): number {
  return rows.reduce((sum, row) => sum + Math.abs(row[field]), 0) / rows.length;
}

process.stdout.write(
  [
    'place, planting: mm replayed by day, from the normals, from the years; % of ETc: normals, years, week totals',
    ...rows.map(
      (row) =>
        `${row.city.padEnd(9)} ${row.name.padEnd(42)}${mm(row.replayedMm)}${mm(row.normalsMm)}${mm(row.recordMm)}` +
        `${percent(row.normals)}${percent(row.record)}${percent(row.totals)}`,
    ),
    '',
  ].join('\n'),
);

describe('a season from the normals, against four real seasons replayed by day', () => {
  it.each(rows)('$city, $name: within 12 % of the season’s ETc', ({ normals }) => {
    expect(Math.abs(normals)).toBeLessThanOrEqual(0.12);
  });

  it('is within 6 % on average', () => {
    expect(average('normals')).toBeLessThanOrEqual(0.06);
  });

  it('is within 3 %, and 1 % on average, where the plan holds the years themselves', () => {
    expect(greatest('record')).toBeLessThanOrEqual(0.03);
    expect(average('record')).toBeLessThanOrEqual(0.01);
  });
});

describe('rain by the week’s total, against the same rain by day', () => {
  it('differs by at most 8 % of the season’s ETc, and by 4 % on average', () => {
    expect(greatest('totals')).toBeLessThanOrEqual(0.08);
    expect(average('totals')).toBeLessThanOrEqual(0.04);
  });
});
