/**
 * The plan document (`*.runnel.json`): only what a person decided or observed, in the unit system that it declares.
 * The types of the whole kit and the published JSON Schema derive from this one schema.
 */
import * as v from 'valibot';
import type { UnitSystem } from '../../engine/units.ts';
import { fields } from './fields.ts';
import { choicesSchema, logSchema } from './records.ts';
import { seasonSchema, siteSchema } from './site.ts';
import { supplySchema } from './supply.ts';
import { name, note } from './text.ts';
import { whatIfsSchema } from './what-ifs.ts';
import { zoneSchema } from './zone.ts';

export const PLAN_FORMAT = 'runnel-plan';
export const PLAN_VERSION = 2;

/** What of a plan can stand there without anybody having said so: it was filled in so that there is a season. */
export const ASSUMED_OF_PLAN = ['season', 'climate', 'soil', 'source', 'flow', 'zones', 'days', 'window'] as const;

export type AssumedOfPlan = (typeof ASSUMED_OF_PLAN)[number];

/** More would be no garden but a mistake. */
export const MOST_ZONES = 5000;

function planSchemaIn<const System extends UnitSystem>(system: System) {
  const zone = zoneSchema(system);
  return fields({
    format: v.literal(PLAN_FORMAT),
    version: v.literal(PLAN_VERSION),
    units: v.literal(system),
    name: name,
    identity: v.optional(name),
    notes: v.optional(note),
    season: seasonSchema,
    site: siteSchema(system),
    supply: v.optional(supplySchema(system)),
    zones: v.pipe(v.array(zone), v.maxLength(MOST_ZONES)),
    log: v.optional(logSchema(system)),
    choices: v.optional(choicesSchema),
    assumed: v.optional(v.pipe(v.array(v.picklist(ASSUMED_OF_PLAN)), v.maxLength(ASSUMED_OF_PLAN.length))),
    whatIfs: v.optional(whatIfsSchema(zone)),
  });
}

let us: ReturnType<typeof planSchemaIn<'us'>> | undefined;
let metric: ReturnType<typeof planSchemaIn<'metric'>> | undefined;

/**
 * The schema in each unit system: alike but for the units' names and the bounds. Made when first asked for, since most pages have
 * plans of one system.
 */
export const PLAN_SCHEMAS = {
  get us() {
    us ??= planSchemaIn('us');
    return us;
  },
  get metric() {
    metric ??= planSchemaIn('metric');
    return metric;
  },
};

type Deep<T> = T extends (infer E)[]
  ? readonly Deep<E>[]
  : T extends object
    ? { readonly [K in keyof T]: Deep<T[K]> }
    : T;

export type Plan = Deep<v.InferOutput<ReturnType<typeof planSchemaIn<UnitSystem>>>>;

/** Name of a field, wherever in a plan it stands: `rootDepth`. */
export type PlanField = FieldsOf<Plan>;

type FieldsOf<T> = T extends readonly (infer E)[]
  ? FieldsOf<E>
  : T extends object
    ? string extends keyof T
      ? FieldsOf<T[keyof T]>
      : { [K in keyof T & string]-?: K | FieldsOf<T[K]> }[keyof T & string]
    : never;

export type PlanSeason = Plan['season'];
export type PlanSite = Plan['site'];
export type PlanClimate = PlanSite['climate'];
/** Real seasons by day. */
export type PlanYears = NonNullable<PlanSite['years']>;
/** Days in a row; see `packed-days.ts`. */
export type PlanStretch = PlanYears['stretches'][number];
/** Weeks that are expected to be other than usual. */
export type PlanDeparture = NonNullable<PlanSite['departures']>[number];
export type PlanSupply = NonNullable<Plan['supply']>;
export type PlanRestriction = NonNullable<PlanSupply['restrictions']>[number];
export type PlanCut = NonNullable<PlanSupply['cuts']>[number];
/** Edits that are tried beside the plan. */
export type PlanWhatIf = NonNullable<Plan['whatIfs']>[number];
export type PlanZone = Plan['zones'][number];
export type PlanPlanting = PlanZone['plantings'][number];
export type PlanLine = PlanPlanting['lines'][number];
export type PlanNeed = PlanPlanting['need'];
export type PlanLog = NonNullable<Plan['log']>;
export type PlanDay = NonNullable<PlanLog['days']>[string];
export type PlanWeek = NonNullable<PlanLog['weeks']>[string];
/** Choices of one zone, by a day of the week. */
export type PlanChoices = NonNullable<Plan['choices']>[string];
export type PlanChoice = PlanChoices[string];
/** What really ran in one zone, by a day of the week. */
export type PlanRuns = NonNullable<PlanLog['runs']>[string];
/** Minutes of the whole week, or what ran on its days. */
export type PlanWeekRun = PlanRuns[string];
export type PlanDayRun = Exclude<PlanWeekRun, number>['days'][string];
export type PlanForecast = NonNullable<PlanLog['forecasts']>[number];
export type Weekday = Extract<PlanZone['wateringDays'], readonly unknown[]>[number];
