/** From the document to the engine's model: SI, whole days, every default filled in. */
import type { Garden } from '../engine/garden.ts';
import { DEFAULTS } from './defaults.ts';
import type { Plan } from './schema/plan-schema.ts';
import { seasonDays } from './season-weeks.ts';
import { observedOf } from './to-garden/observed.ts';
import { siteOf } from './to-garden/site.ts';
import { supplyOf } from './to-garden/supply.ts';
import { zoneOf } from './to-garden/zone.ts';

/**
 * The garden of a valid plan. What did not change since the last call is the same object: a zone while its own document, its choices
 * and runs and all that it takes from the plan are the same; the site's weather, the observations and the supply likewise.
 */
export function gardenOf(plan: Plan): Garden {
  const { units, season, site, choices, log } = plan;
  const firstDay = seasonDays(season).first;
  const supply = supplyOf(plan.supply, { units, firstDay });
  const context = {
    units,
    firstDay: season.firstDay,
    weeks: season.weeks,
    siteSoil: site.soil,
    siteSlopePercent: site.slopePercent ?? DEFAULTS.slopePercent,
    windowWeekdays: supply.windowWeekdays,
  };
  return {
    span: { firstDay, weeks: season.weeks },
    site: siteOf(site, units),
    observed: observedOf(log, units),
    supply,
    zones: plan.zones.map((zone) =>
      zoneOf(zone, { ...context, choices: choices?.[zone.id], runs: log?.runs?.[zone.id] }),
    ),
  };
}
