/** A month's normal reference ET where the climate has its weather and not its ETo. */
import { daysInMonth } from '../../../engine/calendar.ts';
import { meanTemperature, type TemperatureExtremes } from '../../../engine/climate/air-temperature.ts';
import { midMonthDayOfYear } from '../../../engine/climate/mid-month-day-of-year.ts';
import { monthlyReadings } from '../../../engine/climate/monthly-readings.ts';
import { type MonthlyReferenceEt, monthlyReferenceEt } from '../../../engine/climate/monthly-reference-et.ts';
import { monthlySoilHeatFlux } from '../../../engine/climate/soil-heat-flux.ts';
import type { WeatherReadings } from '../../../engine/climate/weather-readings.ts';
import type { GardenSite } from '../../../engine/garden.ts';
import { inId, monthName } from '../names.ts';
import type { TraceStep } from '../trace-step.ts';
import { weatherEtoStep } from './weather-eto-step.ts';

/** A step for each of the calendar months, or none where the climate gives its ETo as such. */
export function monthEtoSteps(site: GardenSite, months: readonly number[]): readonly TraceStep[] {
  if (site.climate.etoMm !== undefined) return [];
  const readings = monthlyReadings(site.climate);
  const computed = monthlyReferenceEt(readings, site);
  // Months without temperatures were refused.
  const ofMonth = (month: number) => readings[month % 12] as WeatherReadings & TemperatureExtremes;
  return months.map((month) => {
    const of = computed[month] as MonthlyReferenceEt;
    return weatherEtoStep({
      id: `eto-month:${inId(monthName(month))}`,
      name: monthName(month),
      method: of.method,
      weather: ofMonth(month),
      site,
      dayOfYear: midMonthDayOfYear(month),
      soilHeatFluxMj: monthlySoilHeatFlux({
        previousMeanC: meanTemperature(ofMonth(month + 11)),
        nextMeanC: meanTemperature(ofMonth(month + 1)),
      }),
      dayCount: daysInMonth(COMMON_YEAR, month),
      etoMm: of.etoMm,
    });
  });
}

/** Normals belong to no year. */
const COMMON_YEAR = 2001;
