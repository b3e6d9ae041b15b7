/** From the document to the engine's model: SI, whole days, every default filled in. */
import type { Garden } from '../engine/garden.ts';
import type { UnitSystem } from '../engine/units.ts';
import { DEFAULTS } from './defaults.ts';
import { requireObject } from './require-argument.ts';
import type { Plan, PlanSeason, PlanSite, PlanZone } from './schema/plan-schema.ts';
import { seasonDays } from './season-weeks.ts';
import { kept } from './to-garden/kept.ts';
import { observedOf } from './to-garden/observed.ts';
import type { PlantingContext } from './to-garden/planting.ts';
import { siteOf } from './to-garden/site.ts';
import { supplyOf } from './to-garden/supply.ts';
import { type ZoneContext, zoneOf } from './to-garden/zone.ts';

/**
 * The garden of a valid plan. What did not change since the last call is the same object: a zone while its own document, its choices
 * and runs and all that it takes from the plan are the same; the site's weather, the observations and the supply likewise. Throws a
 * TypeError for what is no plan at all; whether one is valid, `checkPlan` says.
 */
export function gardenOf(plan: Plan): Garden {
  requireObject('plan', plan, 'units', 'site', 'season', 'zones');
  const { units, site, choices, log } = plan;
  const { firstDay: firstIsoDay, weeks } = plan.season;
  const firstDay = seasonDays(plan.season).first;
  const supply = supplyOf(plan.supply, { units, firstDay });
  const inSeason = plantingContext(plan.season, { units });
  const { windowWeekdays } = supply;
  const context = zoneContext(site, { units, firstDay: firstIsoDay, weeks, inSeason, windowWeekdays });
  const withSources = { ...context, sources: supply.sources };
  const contextOf = ({ application }: PlanZone) => (application?.kind === 'computed' ? withSources : context);
  return {
    span: { firstDay, weeks },
    site: siteOf(site, units),
    observed: observedOf(log, units),
    supply,
    zones: plan.zones.map((zone) =>
      zoneOf(zone, { context: contextOf(zone), choices: choices?.[zone.id], runs: log?.runs?.[zone.id] }),
    ),
  };
}

interface OutsideSite {
  readonly units: UnitSystem;
  readonly firstDay: string;
  readonly weeks: number;
  readonly inSeason: PlantingContext;
  readonly windowWeekdays: number;
}

const plantingContext = kept((season: PlanSeason, { units }: { readonly units: UnitSystem }): PlantingContext => {
  const { first, last } = seasonDays(season);
  return { units, seasonFirst: first, seasonLast: last };
});

/** One object for all zones: mostly the same as before, which is quick to tell. */
const zoneContext = kept(
  ({ soil, slopePercent }: PlanSite, outside: OutsideSite): ZoneContext => ({
    ...outside,
    siteSoil: soil,
    siteSlopePercent: slopePercent ?? DEFAULTS.slopePercent,
  }),
);
