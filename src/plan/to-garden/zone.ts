/** One zone: its soil, its watering days, its efficiency and its plantings; then what was decided week by week. */

import { fastestRateMmPerHour } from '../../engine/application/fastest-rate.ts';
import type { GardenPlanting, GardenSupply, GardenZone, ZoneRule, ZoneSoil } from '../../engine/garden.ts';
import { zoneUniformity } from '../../engine/line/zone-uniformity.ts';
import { longestCycleMinutes } from '../../engine/soil/cycle-and-soak.ts';
import { findTexture } from '../../engine/soil/find-texture.ts';
import { intakeRateMmPerHour } from '../../engine/soil/intake-rate.ts';
import { surfaceStorage } from '../../engine/soil/surface-storage.ts';
import type { UnitSystem } from '../../engine/units.ts';
import { DEFAULTS } from '../defaults.ts';
import type { PlanChoices, PlanRuns, PlanSite, PlanZone } from '../schema/plan-schema.ts';
import { choicesOf, NO_CHOICES } from './choices.ts';
import { type Efficiency, restingEfficiency, zoneWideEfficiency } from './efficiency.ts';
import { memoize, sameFields } from './memoize.ts';
import { type PlantingContext, plantingOf } from './planting.ts';
import { wateringDaysOf } from './weekday-masks.ts';

/** All that a zone hangs on besides itself. */
export interface ZoneContext {
  readonly units: UnitSystem;
  readonly firstDay: string;
  readonly weeks: number;
  /** One object for all plantings, for as long as the season and the units are the same. */
  readonly inSeason: Omit<PlantingContext, 'soil'>;
  readonly siteSoil: PlanSite['soil'];
  readonly siteSlopePercent: number;
  readonly siteAvailableWater: number | undefined;
  readonly windowWeekdays: number;
  readonly restrictions?: GardenSupply['restrictions'];
}

export interface ZoneInPlan {
  readonly context: ZoneContext;
  readonly choices: PlanChoices | undefined;
  readonly runs: PlanRuns | undefined;
}

/** The same object as before where the zone, its context, its choices and its runs are the same. */
export function zoneOf(zone: PlanZone, inPlan: ZoneInPlan): GardenZone {
  return inPlan.choices || inPlan.runs ? chosenZone(zone, inPlan) : zoneGround(zone, inPlan.context);
}

const chosenZone = memoize(
  (zone: PlanZone, { context, choices, runs }: ZoneInPlan): GardenZone => ({
    ...zoneGround(zone, context),
    choices: choicesOf(choices, runs, context),
  }),
  (left, right) =>
    left.choices === right.choices && left.runs === right.runs && sameFields(left.context, right.context),
);

/** A zone for which nothing was chosen. */
const zoneGround = memoize((zone: PlanZone, context: ZoneContext): GardenZone => {
  const soil = soilUnder(groundOf(zone, context), context);
  const { texture, slopePercent } = soil;
  const inSeason = onSoil(context.inSeason, soil);
  const { seasonFirst: first, seasonLast: last } = inSeason;
  const plantingsWith = (ofZone: Efficiency | undefined) =>
    zone.plantings.map((planting) => plantingOf(planting, plantingsContext(inSeason, ofZone)));
  const zoneWide = zoneWideEfficiency(zone, () =>
    zoneUniformity({ plantings: plantingsWith(undefined), firstDay: first, lastDay: last }),
  );
  const plantings = plantingsWith(zoneWide);
  return {
    id: zone.id,
    name: zone.name,
    soil,
    ...wateringDaysOf(zone, { ...context, firstDay: first }),
    rule: ruleOf(zone.rule),
    timerStepMinutes: zone.timerStepMinutes ?? DEFAULTS.timerStepMinutes,
    longestCycleMinutes: zone.longestCycleMinutes ?? longestCycle(plantings, texture, slopePercent),
    startsADay: zone.startsADay ?? DEFAULTS.startsADay,
    ...restingEfficiency(plantings, zoneWide),
    ...(zone.cutOrder === undefined ? {} : { cutOrder: zone.cutOrder }),
    ...(zone.cutExempt ? { cutExempt: true } : {}),
    plantings,
    choices: NO_CHOICES,
  };
});

const NOTHING_ELSE = {};

/** One object for all zones of one soil. */
function onSoil(inSeason: ZoneContext['inSeason'], soil: ZoneSoil): PlantingContext {
  const contexts = soilContexts(inSeason, NOTHING_ELSE);
  const context = contexts.get(soil) ?? { ...inSeason, soil };
  contexts.set(soil, context);
  return context;
}

const soilContexts = memoize(
  (_: ZoneContext['inSeason'], __: typeof NOTHING_ELSE) => new Map<ZoneSoil, PlantingContext>(),
);

/** One object for all zones of one efficiency. */
function plantingsContext(inSeason: PlantingContext, zoneWide: Efficiency | undefined): PlantingContext {
  if (zoneWide === undefined) return inSeason;
  const contexts = zoneWideContexts(inSeason, NOTHING_ELSE);
  const key = `${zoneWide.efficiencyBasis} ${zoneWide.efficiency}`;
  const context = contexts.get(key) ?? { ...inSeason, zoneWide };
  contexts.set(key, context);
  return context;
}

const zoneWideContexts = memoize((_: PlantingContext, __: typeof NOTHING_ELSE) => new Map<string, PlantingContext>());

interface Ground {
  readonly texture: PlanSite['soil'];
  readonly slopePercent: number;
  /** As typed. */
  readonly availableWater: number | undefined;
}

/** Zones of one ground have one soil. */
function soilUnder(ground: Ground, context: ZoneContext): ZoneSoil {
  const soils = soilsOf(context, NOTHING_ELSE);
  const key = Object.values(ground).join();
  const soil = soils.get(key) ?? soilOf(ground);
  soils.set(key, soil);
  return soil;
}

const soilsOf = memoize((_: ZoneContext, __: typeof NOTHING_ELSE) => new Map<string, ZoneSoil>());

/** A soil of its own is another than the one of which the site's available water is known. */
function groundOf(zone: PlanZone, { siteSoil, siteSlopePercent, siteAvailableWater }: ZoneContext): Ground {
  return {
    texture: zone.soil ?? siteSoil,
    slopePercent: zone.slopePercent ?? siteSlopePercent,
    availableWater: zone.availableWater ?? (zone.soil === undefined ? siteAvailableWater : undefined),
  };
}

function soilOf({ texture, slopePercent, availableWater }: Ground): ZoneSoil {
  return {
    texture,
    availableWater: availableWater ?? findTexture(texture).availableWaterUsed,
    intakeMmPerHour: intakeRateMmPerHour(texture, slopePercent),
    slopePercent,
    ...(availableWater === undefined ? {} : { isTyped: true }),
  };
}

function ruleOf(rule: PlanZone['rule']): ZoneRule {
  return rule?.kind === 'planting' ? { kind: 'planting', plantingId: rule.planting } : (rule ?? DEFAULTS.rule);
}

function longestCycle(plantings: readonly GardenPlanting[], texture: PlanSite['soil'], slopePercent: number): number {
  const { basicIntakeMmPerHour, accumulationMm } = surfaceStorage(texture, slopePercent);
  return longestCycleMinutes({
    applicationRateMmPerHour: fastestRateMmPerHour(plantings),
    intakeRateMmPerHour: basicIntakeMmPerHour,
    accumulationMm,
  });
}
