/** Real seasons as the engine sees them. */
import { dayNumber } from '../../engine/calendar.ts';
import type { WeatherStretch, WeatherYears } from '../../engine/garden.ts';
import type { UnitSystem } from '../../engine/units.ts';
import { unpackedMm } from '../packed-days.ts';
import type { PlanStretch, PlanYears } from '../schema/plan-schema.ts';
import { memoize } from './memoize.ts';

interface InUnits {
  readonly units: UnitSystem;
}

export function yearsOf(years: PlanYears | undefined, units: UnitSystem): WeatherYears | undefined {
  return years && weatherYears(years, { units });
}

/** In order of their days. */
const weatherYears = memoize(
  ({ source, stretches }: PlanYears, { units }: InUnits): WeatherYears => ({
    source,
    stretches: stretches
      .map((stretch) => weatherStretch(stretch, { units }))
      .sort((left, right) => left.firstDay - right.firstDay),
  }),
);

const weatherStretch = memoize(
  ({ from, rain, eto }: PlanStretch, { units }: InUnits): WeatherStretch => ({
    firstDay: dayNumber(from),
    rainMm: unpackedMm(rain, units),
    etoMm: unpackedMm(eto, units),
  }),
);
