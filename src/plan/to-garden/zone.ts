/** One zone: its soil, its watering days, its efficiency and its plantings; then what was decided week by week. */

import { applicationRateMmPerHour } from '../../engine/application/application-rate.ts';
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
import { efficiencyOf } from './efficiency.ts';
import { kept, sameFields } from './kept.ts';
import { type PlantingContext, plantingOf } from './planting.ts';
import { wateringMask } from './weekday-masks.ts';

/** All that a zone hangs on besides itself. */
export interface ZoneContext {
  readonly units: UnitSystem;
  readonly firstDay: string;
  readonly weeks: number;
  /** One object for all plantings, for as long as the season and the units are the same. */
  readonly inSeason: PlantingContext;
  readonly siteSoil: PlanSite['soil'];
  readonly siteSlopePercent: number;
  readonly windowWeekdays: number;
  /** Only for a zone whose efficiency rests on the pressure in its lines: any other keeps when the sources change. */
  readonly sources?: GardenSupply['sources'];
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

const chosenZone = kept(
  (zone: PlanZone, { context, choices, runs }: ZoneInPlan): GardenZone => ({
    ...zoneGround(zone, context),
    choices: choicesOf(choices, runs, context),
  }),
  (left, right) =>
    left.choices === right.choices && left.runs === right.runs && sameFields(left.context, right.context),
);

/** A zone for which nothing was chosen. */
const zoneGround = kept((zone: PlanZone, context: ZoneContext): GardenZone => {
  const { texture, slopePercent } = groundOf(zone, context);
  const { inSeason } = context;
  const { seasonFirst: first, seasonLast: last } = inSeason;
  const plantings = zone.plantings.map((planting) => plantingOf(planting, inSeason));
  const { efficiency, efficiencyBasis } = efficiencyOf(zone, () =>
    zoneUniformity({ plantings, supply: { sources: context.sources ?? [] }, firstDay: first, lastDay: last }),
  );
  return {
    id: zone.id,
    name: zone.name,
    soil: soilUnder(texture, slopePercent, context),
    wateringDays: wateringMask(zone.wateringDays, { firstDay: first, windowWeekdays: context.windowWeekdays }),
    rule: ruleOf(zone.rule),
    timerStepMinutes: zone.timerStepMinutes ?? DEFAULTS.timerStepMinutes,
    longestCycleMinutes: zone.longestCycleMinutes ?? longestCycle(plantings, texture, slopePercent),
    startsADay: zone.startsADay ?? DEFAULTS.startsADay,
    efficiency,
    efficiencyBasis,
    plantings,
    choices: NO_CHOICES,
  };
});

/** Zones of one ground have one soil. */
function soilUnder(texture: PlanSite['soil'], slopePercent: number, context: ZoneContext): ZoneSoil {
  const soils = soilsOf(context, NOTHING_ELSE);
  const ground = `${texture} ${slopePercent}`;
  const soil = soils.get(ground) ?? soilOf(texture, slopePercent);
  soils.set(ground, soil);
  return soil;
}

const soilsOf = kept((_: ZoneContext, __: typeof NOTHING_ELSE) => new Map<string, ZoneSoil>());

const NOTHING_ELSE = {};

function groundOf(zone: PlanZone, { siteSoil, siteSlopePercent }: ZoneContext) {
  return { texture: zone.soil ?? siteSoil, slopePercent: zone.slopePercent ?? siteSlopePercent };
}

function soilOf(texture: PlanSite['soil'], slopePercent: number): ZoneSoil {
  return {
    texture,
    availableWater: findTexture(texture).availableWaterUsed,
    intakeMmPerHour: intakeRateMmPerHour(texture, slopePercent),
    slopePercent,
  };
}

function ruleOf(rule: PlanZone['rule']): ZoneRule {
  return rule?.kind === 'planting' ? { kind: 'planting', plantingId: rule.planting } : (rule ?? DEFAULTS.rule);
}

/** By the line that lays on water the fastest: each line's flow over its planting's ground. */
function longestCycle(plantings: readonly GardenPlanting[], texture: PlanSite['soil'], slopePercent: number): number {
  const { basicIntakeMmPerHour, accumulationMm } = surfaceStorage(texture, slopePercent);
  const rates = plantings.flatMap(({ lines, areaM2 }) =>
    lines.map(({ flowLph }) => applicationRateMmPerHour(flowLph, areaM2)),
  );
  return longestCycleMinutes({
    applicationRateMmPerHour: Math.max(0, ...rates),
    intakeRateMmPerHour: basicIntakeMmPerHour,
    accumulationMm,
  });
}
