/** A plan to begin with. */
import type { IsoDate } from '../engine/calendar.ts';
import type { UnitSystem } from '../engine/units.ts';
import { PLAN_FORMAT, PLAN_VERSION, type Plan } from './schema/plan-schema.ts';

export interface EmptyPlanOptions {
  readonly units: UnitSystem;
  readonly firstDay: IsoDate;
  readonly weeks: number;
  readonly name: string;
}

/**
 * A valid plan without zones, of loam, without rain, and without any reference ET: nothing is computed from a climate that nobody
 * gave. Site and climate are the first thing to fill in.
 */
export function emptyPlan({ units, firstDay, weeks, name }: EmptyPlanOptions): Plan {
  const nothing = Array.from({ length: 12 }, () => 0);
  return {
    format: PLAN_FORMAT,
    version: PLAN_VERSION,
    units,
    name,
    season: { firstDay, weeks },
    site: { latitude: 0, soil: 'loam', climate: { source: '', eto: nothing, rain: nothing } },
    zones: [],
  };
}
