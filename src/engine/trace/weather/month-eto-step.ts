/** A month's normal reference ET where the climate has its weather and not its ETo. */
import { daysInMonth } from '../../calendar.ts';
import { meanTemperature } from '../../climate/air-temperature.ts';
import { midMonthDayOfYear } from '../../climate/mid-month-day-of-year.ts';
import { monthlyReadings } from '../../climate/monthly-readings.ts';
import { monthlyReferenceEt } from '../../climate/monthly-reference-et.ts';
import { monthlySoilHeatFlux } from '../../climate/soil-heat-flux.ts';
import { hasTemperatures, type WeatherReadings } from '../../climate/weather-readings.ts';
import type { GardenSite } from '../../garden.ts';
import { inId, monthName } from '../names.ts';
import type { TraceStep } from '../trace-step.ts';
import { weatherEtoStep } from './weather-eto-step.ts';

/** A step for each of the calendar months, or none where the climate gives its ETo as such. */
export function monthEtoSteps(site: GardenSite, months: readonly number[]): readonly TraceStep[] {
  if (site.climate.etoMm !== undefined) return [];
  const readings = monthlyReadings(site.climate);
  const computed = monthlyReferenceEt(readings, site);
  return months.flatMap((month) => {
    const weather = readings[month];
    const of = computed[month];
    if (weather === undefined || of === undefined || !hasTemperatures(weather)) return [];
    return weatherEtoStep({
      id: `eto-month:${inId(monthName(month))}`,
      name: monthName(month),
      method: of.method,
      weather,
      site,
      dayOfYear: midMonthDayOfYear(month),
      soilHeatFluxMj: monthlySoilHeatFlux({
        previousMeanC: meanOf(readings[(month + 11) % 12]),
        nextMeanC: meanOf(readings[(month + 1) % 12]),
      }),
      dayCount: daysInMonth(COMMON_YEAR, month),
      etoMm: of.etoMm,
    });
  });
}

/** Normals belong to no year. */
const COMMON_YEAR = 2001;

function meanOf(weather: WeatherReadings | undefined): number {
  return weather !== undefined && hasTemperatures(weather) ? meanTemperature(weather) : Number.NaN;
}
