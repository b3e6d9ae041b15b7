/** The season's weather by day: observed days win over observed weeks, weeks over the normals. */
import type { Garden, GardenSite, ObservedDay, ObservedWeek } from '../../src/engine/garden.ts';
import { dayOfYear } from './calendar.ts';
import { actualVapour, hargreaves, penmanMonteith, saturationKpa, windAtTwoMetres } from './climate.ts';
import { dayOfNormals, monthlyEto } from './normals.ts';

export interface WeatherDay {
  readonly day: number;
  readonly etoMm: number;
  readonly rainMm: number;
  readonly rainFrom: 'day' | 'week' | 'normals';
}

export function weatherOf(garden: Garden): readonly WeatherDay[] {
  const { span, site } = garden;
  const etoTotals = monthlyEto(site);
  const days: WeatherDay[] = [];
  for (let week = 0; week < span.weeks; week++) {
    const dates = [0, 1, 2, 3, 4, 5, 6].map((offset) => span.firstDay + 7 * week + offset);
    const seen = dates.map((day) => garden.observed.days.get(day) ?? {});
    const total = totalOf(garden.observed.weeks, dates);
    const eto = spread(
      seen.map((day, offset) => observedEto(site, span.firstDay + 7 * week + offset, day)),
      total.etoMm,
    );
    const rain = spread(
      seen.map((day) => day.rainMm),
      total.rainMm,
    );
    dates.forEach((day, offset) => {
      days.push({
        day,
        etoMm: eto[offset] ?? dayOfNormals(etoTotals, day),
        rainMm: rain[offset] ?? dayOfNormals(site.climate.rainMm, day),
        rainFrom: rainSource(seen[offset]?.rainMm, total.rainMm),
      });
    });
  }
  return days;
}

/** A week's totals, written by any of its days; of several the later counts. */
function totalOf(weeks: ReadonlyMap<number, ObservedWeek>, dates: readonly number[]): ObservedWeek {
  const totals = dates.flatMap((day) => weeks.get(day) ?? []);
  return {
    rainMm: totals.findLast(({ rainMm }) => rainMm !== undefined)?.rainMm,
    etoMm: totals.findLast(({ etoMm }) => etoMm !== undefined)?.etoMm,
  };
}

function rainSource(ofDay: number | undefined, ofWeek: number | undefined): WeatherDay['rainFrom'] {
  if (ofDay !== undefined) return 'day';
  return ofWeek !== undefined ? 'week' : 'normals';
}

/** Fills the days without a figure with equal parts of what the week's total leaves. */
function spread(days: readonly (number | undefined)[], total: number | undefined): readonly (number | undefined)[] {
  if (total === undefined) return days;
  const known = days.filter((value) => value !== undefined);
  const rest = Math.max(0, total - known.reduce((sum, value) => sum + value, 0));
  return days.map((value) => value ?? rest / (7 - known.length));
}

function observedEto(site: GardenSite, day: number, seen: ObservedDay): number | undefined {
  if (seen.etoMm !== undefined) return seen.etoMm;
  const minC = seen.minTemperatureC;
  const maxC = seen.maxTemperatureC;
  if (minC === undefined || maxC === undefined) return undefined;
  const humidity = actualVapour({ ...seen, minC, maxC });
  const { windMs, radiationMj, sunshineHours } = seen;
  const sunSeen = radiationMj !== undefined || sunshineHours !== undefined;
  const isComplete = humidity !== undefined && windMs !== undefined && sunSeen;
  if (!isComplete && site.whenIncomplete !== 'penman-monteith') return hargreaves(site, dayOfYear(day), minC, maxC);
  return penmanMonteith(site, dayOfYear(day), {
    minC,
    maxC,
    // Eq. 48: the lowest temperature is near the dew point.
    actualVapourKpa: humidity ?? saturationKpa(minC),
    windMs: windAtTwoMetres(windMs, site.windHeightM ?? 2),
    radiationMj,
    sunshineHours,
    soilHeatMj: 0,
  });
}
