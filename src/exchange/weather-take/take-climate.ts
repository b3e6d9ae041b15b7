/** A record of years as the climate and the years of a plan: an edit, with what it was made of, to be looked at first. */

import { yearOf } from '../../engine/calendar.ts';
import type { ReferenceEtMethod } from '../../engine/climate/reference-et.ts';
import type { WeatherSite } from '../../engine/climate/weather-readings.ts';
import type { DailyRecord } from '../../engine/record/daily-record.ts';
import { recordEtoSteps } from '../../engine/record/record-eto.ts';
import { bridged } from '../../engine/record/record-gaps.ts';
import { recordNormals } from '../../engine/record/record-normals.ts';
import { normalsPart } from '../../engine/record/record-span.ts';
import { fromSi, type UnitSystem } from '../../engine/units.ts';
import type { Change, Edit } from '../../plan/edits/edit.ts';
import { packedYears } from '../../plan/packed-years.ts';
import type { Plan, PlanClimate, PlanSite } from '../../plan/schema/plan-schema.ts';
import { siteOf } from '../../plan/to-garden/site.ts';

/** The least rain of a rain day where nobody says another: 0.01 in, written as 0.25 mm. */
export const USUAL_RAIN_DAY_MM = 0.25;

export interface ClimateChoice {
  /** Where the figures come from, as it will stand in the plan. */
  readonly source: string;
  /** Least rain that makes a rain day. */
  readonly rainDayThresholdMm?: number;
  /** Whether gaps of up to five days in temperatures are filled by a straight line: as a person agreed. */
  readonly bridge?: boolean;
  /** Latitude and height of the station, where they are known; else the plan's. */
  readonly place?: { readonly latitudeDeg: number | undefined; readonly elevationM: number | undefined };
  /** What else of the site changes with it: its name, its coordinates. */
  readonly site?: Change<PlanSite>;
}

export interface ClimateTaken {
  /** Undefined where the record has no month's rain and no month's reference ET, or is the same. */
  readonly edit: Edit | undefined;
  readonly climate: PlanClimate;
  /** Years that normals were made of. */
  readonly firstYear: number;
  readonly lastYear: number;
  /** Of how many days each method made reference ET. */
  readonly etoDays: Readonly<Record<ReferenceEtMethod, number>>;
  /** What a month lacks altogether: the plan keeps its own. */
  readonly lacking: readonly ('eto' | 'rain')[];
  /** Seasons that the plan will hold by day. */
  readonly years: number;
}

/** What a record would change in a plan. The plan's own figures stay where the record has none. */
export function takeClimate(record: DailyRecord, plan: Plan, choice: ClimateChoice): ClimateTaken {
  const steps = climateSteps(record, plan, choice);
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
  }
}

/** The same with a pause after each year. */
export function* climateSteps(record: DailyRecord, plan: Plan, choice: ClimateChoice): Generator<void, ClimateTaken> {
  const { site, season } = plan;
  const whole = choice.bridge === true ? bridged(record) : record;
  const eto = yield* recordEtoSteps(whole, weatherSite(plan, choice));
  const known = { ...whole, columns: { ...whole.columns, etoMm: eto.mm } };
  const part = normalsPart(known, [whole.columns.rainMm, eto.mm]);
  yield;
  const { rainDayThresholdMm = USUAL_RAIN_DAY_MM } = choice;
  const normals = recordNormals(part, {
    etoMm: part.columns.etoMm ?? new Float64Array(part.dayCount).fill(Number.NaN),
    rainDayThresholdMm,
  });
  const climate = climateOf(normals, plan, choice);
  yield;
  const { rainMm } = whole.columns;
  const years =
    rainMm && packedYears({ firstDay: whole.firstDay, rainMm, etoMm: eto.mm, source: choice.source, season });
  const lacking = [
    ...(normals.etoMm === undefined ? (['eto'] as const) : []),
    ...(normals.rainMm === undefined ? (['rain'] as const) : []),
  ];
  const change: Change<PlanSite> = { ...choice.site, climate, ...(years === undefined ? {} : { years }) };
  const edit: Edit = {
    type: 'together',
    action: 'take-climate',
    edits: [{ type: 'change-site', change }],
  };
  return {
    edit: lacking.length === 2 ? undefined : edit,
    climate: lacking.length === 2 ? site.climate : climate,
    firstYear: yearOf(part.firstDay),
    lastYear: yearOf(part.firstDay + part.dayCount - 1),
    etoDays: eto.days,
    lacking,
    years: years === undefined ? 0 : yearCount(years.stretches.length, whole),
  };
}

/** One stretch holds all of the record's years. */
function yearCount(stretches: number, { firstDay, dayCount }: DailyRecord): number {
  return stretches > 1 ? stretches : yearOf(firstDay + dayCount - 1) - yearOf(firstDay) + 1;
}

function weatherSite({ site, units }: Plan, { place, site: change }: ClimateChoice): WeatherSite {
  const own = siteOf({ ...site, ...(change as Partial<PlanSite>) }, units);
  return {
    ...own,
    latitudeDeg: place?.latitudeDeg ?? own.latitudeDeg,
    elevationM: place?.elevationM ?? own.elevationM,
  };
}

type Normals = ReturnType<typeof recordNormals>;

function climateOf(
  { etoMm, rainMm, rainDays, minTemperatureC, maxTemperatureC }: Normals,
  { units, site }: Plan,
  { source, rainDayThresholdMm = USUAL_RAIN_DAY_MM }: ClimateChoice,
): PlanClimate {
  const before = site.climate;
  const threshold =
    rainDayThresholdMm === USUAL_RAIN_DAY_MM
      ? {}
      : { rainDayThreshold: inUnits(rainDayThresholdMm, 'depth', units, 3) };
  const own = {
    eto: etoMm?.map((mm) => inUnits(mm, 'depth', units)) ?? before.eto,
    minTemperature: minTemperatureC?.map((degrees) => inUnits(degrees, 'temperature', units)) ?? before.minTemperature,
    maxTemperature: maxTemperatureC?.map((degrees) => inUnits(degrees, 'temperature', units)) ?? before.maxTemperature,
  };
  const rain =
    rainMm === undefined
      ? { rain: before.rain, rainDays: before.rainDays, rainDayThreshold: before.rainDayThreshold }
      : {
          rain: rainMm.map((mm) => inUnits(mm, 'depth', units)),
          rainDays: rainDays?.map((days) => Number(days.toFixed(1))),
          ...threshold,
        };
  const columns = Object.entries({ ...own, ...rain }).filter(([, value]) => value !== undefined);
  return { source, ...Object.fromEntries(columns) } as PlanClimate;
}

/** As a person would write it: hundredths of an inch, tenths of a millimetre or degree. */
function inUnits(value: number, quantity: 'depth' | 'temperature', units: UnitSystem, more = 0): number {
  const digits = (quantity === 'depth' && units === 'us' ? 2 : 1) + more;
  return Number(fromSi(value, quantity, units).toFixed(digits));
}
