import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { seattlePlan } from '../../demo/seattle-plan.ts';
import { dayOfYear, monthOf, yearOf } from '../../src/engine/calendar.ts';
import { extraterrestrialRadiation } from '../../src/engine/climate/extraterrestrial-radiation.ts';
import { hargreavesSamani } from '../../src/engine/climate/hargreaves-samani.ts';
import { SUPPLY_FIELDS } from '../../src/engine/season/season.ts';
import { zoneWeek } from '../../src/engine/season/zone-week.ts';
import { computeSeason } from '../../src/plan/compute-season.ts';
import { SEATTLE_LATITUDE_DEG, seattleWeather } from '../engine/climate/seattle-weather.ts';

const text = readFileSync(new URL(import.meta.resolve('vega-datasets/data/seattle-weather.csv')), 'utf8');
const { plan, says } = seattlePlan(text);
const season = computeSeason(plan);

// Own regression figures of the reference, not published: daily Hargreaves of April to September by year, mm.
const SUMMERS = new Map([
  [2012, 639.7],
  [2013, 669.6],
  [2014, 693.4],
  [2015, 719.7],
]);

function summerEtoMm(year: number): number {
  const days = seattleWeather().filter(({ day }) => yearOf(day) === year && monthOf(day) >= 3 && monthOf(day) <= 8);
  return days.reduce((sum, { day, ...temperatures }) => {
    const extraterrestrialMj = extraterrestrialRadiation({
      latitudeDeg: SEATTLE_LATITUDE_DEG,
      dayOfYear: dayOfYear(day),
    });
    return sum + hargreavesSamani({ ...temperatures, extraterrestrialMj });
  }, 0);
}

describe('a season from four years of daily weather in Seattle', () => {
  it('says what it is made of', () => {
    expect(says).toContain('1,461 days');
    expect(says).toContain('invented');
  });

  it('has an April to September ETo within 3 % of the mean of the four years of daily Hargreaves', () => {
    const { eto, firstDay } = season.weather;
    const summer = eto.mm.reduce((sum, mm, place) => {
      const month = monthOf(firstDay + place);
      return month >= 3 && month <= 8 ? sum + mm : sum;
    }, 0);
    // The season starts on 5 April: its four days before are April's share of the normals.
    const missing = (eto.mm[0] as number) * 4;
    const years = [...SUMMERS.keys()].map(summerEtoMm);
    const known = [...SUMMERS.values()];
    years.forEach((mm, place) => {
      expect(mm).toBeCloseTo(known[place] as number, 0);
    });
    const mean = years.reduce((sum, mm) => sum + mm, 0) / years.length;
    expect(Math.abs(summer + missing - mean) / mean).toBeLessThan(0.03);
  });

  it('closes the water of every zone and week to 1e-9', () => {
    for (const zone of season.zones) {
      for (let week = 0; week < zone.weeks; week++) {
        const cell = zoneWeek(zone, week);
        const incoming = cell.rainLitres + cell.litres;
        const outgoing = cell.usedLitres + cell.drainedLitres + cell.lostLitres + cell.storageLitres;
        expect(Math.abs(incoming - outgoing)).toBeLessThanOrEqual(1e-9 * Math.max(1, incoming));
      }
    }
  });

  it('needs no irrigation in a wet April and the most in July or August', () => {
    const litres = Array.from({ length: 26 }, (_, week) => season.totals.figures.at(SUPPLY_FIELDS.litres, week));
    expect(litres[0]).toBe(0);
    const peak = litres.indexOf(Math.max(...litres));
    expect(monthOf(season.weather.firstDay + peak * 7)).toBeGreaterThanOrEqual(6);
    expect(monthOf(season.weather.firstDay + peak * 7)).toBeLessThanOrEqual(7);
  });
});
