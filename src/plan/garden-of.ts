/** From the document to the engine's model: SI, whole days, every default filled in. */
import type { Garden, GardenSupply } from '../engine/garden.ts';
import type { UnitSystem } from '../engine/units.ts';
import { DEFAULTS } from './defaults.ts';
import { requireObject } from './require-argument.ts';
import type { Plan, PlanSeason, PlanSite } from './schema/plan-schema.ts';
import { seasonDays } from './season-weeks.ts';
import { withAreaAllowance } from './to-garden/area-allowance.ts';
import { inSi } from './to-garden/in-si.ts';
import { memoize, sameFields } from './to-garden/memoize.ts';
import { observedOf } from './to-garden/observed.ts';
import type { SourcePressures } from './to-garden/planting.ts';
import { frozenMonthsOf } from './to-garden/rest.ts';
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
  const pressures = supply.sources.map(({ from, pressureKpa }) => ({ from, pressureKpa }));
  const gardenSite = siteOf(site, units, plan.season);
  const frozenMonths = frozenMonthsOf(gardenSite.climate.minTemperatureC);
  const leachingFraction = plan.supply?.leachingFraction;
  const inSeason = plantingContext(plan.season, { units, pressures, frozenMonths, leachingFraction });
  const { windowWeekdays, restrictions } = supply;
  const context = zoneContext(site, { units, firstDay: firstIsoDay, weeks, inSeason, windowWeekdays, restrictions });
  const zones = plan.zones.map((zone) =>
    zoneOf(zone, { context, choices: choices?.[zone.id], runs: log?.runs?.[zone.id] }),
  );
  const litresPerM2 = inSi(plan.supply?.allowance?.perArea, 'waterPerArea', units);
  return {
    span: { firstDay, weeks },
    site: gardenSite,
    observed: observedOf(log, units),
    supply: withAreaAllowance(supply, litresPerM2, { zones, first: firstDay, last: firstDay + 7 * weeks - 1 }),
    zones,
  };
}

interface OutsideSite {
  readonly units: UnitSystem;
  readonly firstDay: string;
  readonly weeks: number;
  readonly inSeason: InSeasonContext;
  readonly windowWeekdays: number;
  readonly restrictions: GardenSupply['restrictions'];
}

type InSeasonContext = ZoneContext['inSeason'];

interface InSeason {
  readonly units: UnitSystem;
  readonly pressures: SourcePressures;
  readonly frozenMonths: number;
  readonly leachingFraction: number | undefined;
}

/** The same while the pressures are, whatever else of the sources has changed. */
const plantingContext = memoize(
  (season: PlanSeason, outside: InSeason): InSeasonContext => {
    const { first, last } = seasonDays(season);
    return { ...outside, seasonFirst: first, seasonLast: last };
  },
  (left, right) =>
    left.units === right.units &&
    left.frozenMonths === right.frozenMonths &&
    left.leachingFraction === right.leachingFraction &&
    left.pressures.length === right.pressures.length &&
    left.pressures.every((pressure, index) => sameFields(pressure, right.pressures[index] ?? {})),
);

/** One object for all zones: mostly the same as before, which is quick to tell. */
const zoneContext = memoize(
  ({ soil, slopePercent, availableWater }: PlanSite, outside: OutsideSite): ZoneContext => ({
    ...outside,
    siteSoil: soil,
    siteAvailableWater: availableWater,
    siteSlopePercent: slopePercent ?? DEFAULTS.slopePercent,
  }),
);
