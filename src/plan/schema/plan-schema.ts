/**
 * The plan document (`*.runnel.json`): only what a person decided or observed, in the unit system that it declares.
 * The types of the whole kit and the published JSON Schema derive from this one schema.
 */
import * as v from 'valibot';
import type { UnitSystem } from '../../engine/units.ts';
import { choicesSchema, logSchema } from './records.ts';
import { seasonSchema, siteSchema } from './site.ts';
import { supplySchema } from './supply.ts';
import { name, note } from './text.ts';
import { zoneSchema } from './zone.ts';

export const PLAN_FORMAT = 'runnel-plan';
export const PLAN_VERSION = 1;

function planSchemaIn<System extends UnitSystem>(system: System) {
  return v.strictObject({
    format: v.literal(PLAN_FORMAT, `the word ${PLAN_FORMAT}`),
    version: v.literal(PLAN_VERSION, `version ${PLAN_VERSION}`),
    units: v.literal(system),
    name,
    notes: v.optional(note),
    season: seasonSchema,
    site: siteSchema(system),
    supply: v.optional(supplySchema(system)),
    zones: v.array(zoneSchema(system), 'a list of zones'),
    log: v.optional(logSchema(system)),
    choices: v.optional(choicesSchema),
  });
}

export const planSchema = v.variant('units', [planSchemaIn('us'), planSchemaIn('metric')], 'units of us or metric');

type Deep<T> = T extends (infer E)[] ? readonly Deep<E>[] : T extends object ? { readonly [K in keyof T]: Deep<T[K]> } : T;

export type Plan = Deep<v.InferOutput<ReturnType<typeof planSchemaIn<UnitSystem>>>>;
export type PlanSite = Plan['site'];
export type PlanClimate = PlanSite['climate'];
export type PlanSupply = NonNullable<Plan['supply']>;
export type PlanZone = Plan['zones'][number];
export type PlanPlanting = PlanZone['plantings'][number];
export type PlanLine = PlanPlanting['lines'][number];
export type PlanNeed = PlanPlanting['need'];
export type PlanLog = NonNullable<Plan['log']>;
export type PlanChoice = NonNullable<Plan['choices']>[string][string];
export type Weekday = Extract<PlanZone['wateringDays'], readonly unknown[]>[number];
