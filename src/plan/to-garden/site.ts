/** The site as the engine sees it. Soil and slope are not in it: they belong to the zones. */
import type { GardenSite, MonthlyClimate } from '../../engine/garden.ts';
import type { UnitSystem } from '../../engine/units.ts';
import { DEFAULTS } from '../defaults.ts';
import type { PlanClimate, PlanSite } from '../schema/plan-schema.ts';
import { inSi, listInSi, present } from './in-si.ts';
import { kept } from './kept.ts';

export function siteOf({ latitude, elevation, climate, rain }: PlanSite, units: UnitSystem): GardenSite {
  return gardenSite(climate, {
    units,
    latitudeDeg: latitude,
    elevationM: inSi(elevation, 'elevation', units) ?? DEFAULTS.elevationM,
    method: rain?.method ?? DEFAULTS.rainMethod,
    fraction: rain?.fraction ?? DEFAULTS.rainFraction,
    runoffFraction: rain?.runoff ?? DEFAULTS.runoffFraction,
  });
}

type SiteContext = Omit<GardenSite, 'climate' | 'rain'> & GardenSite['rain'] & { readonly units: UnitSystem };

const gardenSite = kept(
  (climate: PlanClimate, { units, latitudeDeg, elevationM, ...rain }: SiteContext): GardenSite => ({
    latitudeDeg,
    elevationM,
    climate: monthlyClimate(climate, { units }),
    rain,
  }),
);

const monthlyClimate = kept(
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
    }),
);
