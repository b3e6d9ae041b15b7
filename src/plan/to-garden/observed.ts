/** Observed weather as the engine sees it, by day number. */
import { type DayNumber, dayNumber } from '../../engine/calendar.ts';
import type { ObservedDay, ObservedWeather, ObservedWeek } from '../../engine/garden.ts';
import type { UnitSystem } from '../../engine/units.ts';
import type { PlanDay, PlanLog, PlanWeek } from '../schema/plan-schema.ts';
import { inSi, present } from './in-si.ts';
import { kept } from './kept.ts';

interface InUnits {
  readonly units: UnitSystem;
}

const NO_DAYS: NonNullable<PlanLog['days']> = {};
const NO_WEEKS: NonNullable<PlanLog['weeks']> = {};

export function observedOf(log: PlanLog | undefined, units: UnitSystem): ObservedWeather {
  const days = log?.days ?? NO_DAYS;
  const weeks = log?.weeks ?? NO_WEEKS;
  // The two empty records are shared by all plans: what is kept hangs on the one that is a plan's own.
  if (days === NO_DAYS) return observedFromWeeks(weeks, { days, units });
  return observedFromDays(days, { weeks, units });
}

const observedFromDays = kept(
  (days: NonNullable<PlanLog['days']>, { weeks, units }: InUnits & { weeks: NonNullable<PlanLog['weeks']> }) =>
    observed(days, weeks, units),
);

const observedFromWeeks = kept(
  (weeks: NonNullable<PlanLog['weeks']>, { days, units }: InUnits & { days: NonNullable<PlanLog['days']> }) =>
    observed(days, weeks, units),
);

function observed(
  days: NonNullable<PlanLog['days']>,
  weeks: NonNullable<PlanLog['weeks']>,
  units: UnitSystem,
): ObservedWeather {
  return { days: observedDays(days, { units }), weeks: observedWeeks(weeks, { units }) };
}

const observedDays = kept((days: NonNullable<PlanLog['days']>, { units }: InUnits) =>
  byDay(days, (day) => observedDay(day, { units })),
);

const observedWeeks = kept((weeks: NonNullable<PlanLog['weeks']>, { units }: InUnits) =>
  byDay(weeks, (week) => observedWeek(week, { units })),
);

const observedDay = kept(
  (day: PlanDay, { units }: InUnits): ObservedDay =>
    present({
      rainMm: inSi(day.rain, 'depth', units),
      etoMm: inSi(day.eto, 'depth', units),
      minTemperatureC: inSi(day.minTemperature, 'temperature', units),
      maxTemperatureC: inSi(day.maxTemperature, 'temperature', units),
      dewPointC: inSi(day.dewPoint, 'temperature', units),
      maxHumidityPercent: day.maxHumidityPercent,
      minHumidityPercent: day.minHumidityPercent,
      windMs: inSi(day.wind, 'windSpeed', units),
      radiationMj: day.radiationMj,
      sunshineHours: day.sunshineHours,
    }),
);

const observedWeek = kept(
  (week: PlanWeek, { units }: InUnits): ObservedWeek =>
    present({ rainMm: inSi(week.rain, 'depth', units), etoMm: inSi(week.eto, 'depth', units) }),
);

function byDay<Typed, Seen>(
  record: Readonly<Record<string, Typed>>,
  convert: (value: Typed) => Seen,
): ReadonlyMap<DayNumber, Seen> {
  return new Map(Object.entries(record).map(([day, value]) => [dayNumber(day), convert(value)]));
}
