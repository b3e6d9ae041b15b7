import { isoDate } from '../engine/calendar.ts';
import type { WeatherStretch } from '../engine/garden.ts';
import { packedDays } from './pack-days.ts';
import type { PlanStretch } from './schema/plan-schema.ts';

/** Days in a row as a plan holds them, for those who read weather from elsewhere; both arrays are of one length, at least 1. */
export function packedStretch({ firstDay, rainMm, etoMm }: WeatherStretch): PlanStretch {
  return { from: isoDate(firstDay), rain: packedDays(rainMm), eto: packedDays(etoMm) };
}
