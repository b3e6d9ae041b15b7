/** The site as the engine sees it. Soil and slope are not in it: they belong to the zones. */
import { daysInMonth } from '../../engine/calendar.ts';
import { COMMON_YEAR } from '../../engine/climate/mid-month-day-of-year.ts';
import type { WeatherSite } from '../../engine/climate/weather-readings.ts';
import type { GardenSite, MonthlyClimate } from '../../engine/garden.ts';
import { rainDaysAtLeast025Mm } from '../../engine/rain/rain-day-threshold.ts';
import type { UnitSystem } from '../../engine/units.ts';
import { DEFAULTS } from '../defaults.ts';
import type { PlanClimate, PlanSeason, PlanSite } from '../schema/plan-schema.ts';
import { inSi, listInSi, present } from './in-si.ts';
import { memoize } from './memoize.ts';
import { timesUsual } from './times-usual.ts';
import { yearsOf } from './years.ts';

/** `season`: which days may be unlike usual; left out where no day of a season is asked about. */
export function siteOf(site: PlanSite, units: UnitSystem, season?: PlanSeason): GardenSite {
  const { latitude, elevation, windHeight, setting, missingWeather, climate, years, rain, departures } = site;
  return gardenSite(climate, {
    units,
    latitudeDeg: latitude,
    elevationM: inSi(elevation, 'elevation', units),
    windHeightM: inSi(windHeight, 'height', units),
    setting,
    whenIncomplete: missingWeather,
    method: rain?.method ?? DEFAULTS.rainMethod,
    fraction: rain?.fraction ?? DEFAULTS.rainFraction,
    runoffFraction: rain?.runoff ?? DEFAULTS.runoffFraction,
    years: yearsOf(years, units),
    timesUsual: departures && season && timesUsual(departures, season),
  });
}

type SiteContext = WeatherSite &
  GardenSite['rain'] &
  Pick<GardenSite, 'years' | 'timesUsual'> & { readonly units: UnitSystem };

const gardenSite = memoize((climate: PlanClimate, { units, ...site }: SiteContext): GardenSite => {
  const { method, fraction, runoffFraction, ...place } = site;
  return present({
    ...place,
    climate: monthlyClimate(climate, { units }),
    rain: { method, fraction, runoffFraction },
  });
});

const monthlyClimate = memoize(
  (climate: PlanClimate, { units }: { readonly units: UnitSystem }): MonthlyClimate =>
    present({
      source: climate.source,
      etoMm: listInSi(climate.eto, 'depth', units),
      minTemperatureC: listInSi(climate.minTemperature, 'temperature', units),
      maxTemperatureC: listInSi(climate.maxTemperature, 'temperature', units),
      dewPointC: listInSi(climate.dewPoint, 'temperature', units),
      windMs: listInSi(climate.wind, 'windSpeed', units),
      sunshineHours: climate.sunshineHours,
      rainMm: climate.rain.map((depth) => inSi(depth, 'depth', units)),
      rainDays: rainDaysOf(climate, units),
    }),
);

/** Counted from 0.25 mm on. */
function rainDaysOf(
  { rainDays, rainDayThreshold, rain }: PlanClimate,
  units: UnitSystem,
): readonly number[] | undefined {
  if (rainDayThreshold === undefined) return rainDays;
  const thresholdMm = inSi(rainDayThreshold, 'depth', units);
  return rainDays?.map((days, month) =>
    rainDaysAtLeast025Mm(days, thresholdMm, inSi(rain[month] ?? 0, 'depth', units), daysInMonth(COMMON_YEAR, month)),
  );
}
