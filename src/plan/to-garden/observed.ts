/** Weather that was observed, and what was forecast, as the engine sees them, by day number. */
import { type DayNumber, dayNumber } from '../../engine/calendar.ts';
import type { Forecast, ForecastDay, ObservedDay, ObservedWeather, ObservedWeek } from '../../engine/garden.ts';
import type { UnitSystem } from '../../engine/units.ts';
import { readingSource } from '../reading-sources.ts';
import type { PlanDay, PlanForecast, PlanLog, PlanWeek } from '../schema/plan-schema.ts';
import { inSi, present } from './in-si.ts';
import { memoize } from './memoize.ts';

interface InUnits {
  readonly units: UnitSystem;
}

type Days = NonNullable<PlanLog['days']>;
type Weeks = NonNullable<PlanLog['weeks']>;
type Forecasts = NonNullable<PlanLog['forecasts']>;

interface Parts extends InUnits {
  readonly days: Days;
  readonly weeks: Weeks;
  readonly forecasts: Forecasts | undefined;
}

const NO_DAYS: Days = {};
const NO_WEEKS: Weeks = {};

export function observedOf(log: PlanLog | undefined, units: UnitSystem): ObservedWeather {
  const { days = NO_DAYS, weeks = NO_WEEKS, forecasts } = log ?? {};
  // The two empty records are shared by all plans: what is kept hangs on a part that is a plan's own, where there is one.
  return observed(log?.days ?? log?.weeks ?? forecasts ?? NO_DAYS, { days, weeks, forecasts, units });
}

const observed = memoize(
  (_: object, { days, weeks, forecasts, units }: Parts): ObservedWeather =>
    present({
      days: observedDays(days, { units }),
      weeks: observedWeeks(weeks, { units }),
      forecasts: forecasts && inOrder(forecasts, { units }),
    }),
);

const observedDays = memoize((days: Days, { units }: InUnits) => byDay(days, (day) => observedDay(day, { units })));

const observedWeeks = memoize((weeks: Weeks, { units }: InUnits) =>
  byDay(weeks, (week) => observedWeek(week, { units })),
);

const inOrder = memoize((forecasts: Forecasts, { units }: InUnits): readonly Forecast[] =>
  forecasts.map((forecast) => forecastOf(forecast, { units })).sort((left, right) => left.issued - right.issued),
);

const forecastOf = memoize(
  ({ issued, days }: PlanForecast, { units }: InUnits): Forecast => ({
    issued: dayNumber(issued),
    days: byDay(
      days,
      ({ rain, eto }): ForecastDay => present({ rainMm: inSi(rain, 'depth', units), etoMm: inSi(eto, 'depth', units) }),
    ),
  }),
);

const observedDay = memoize(
  (day: PlanDay, { units }: InUnits): ObservedDay =>
    present({
      rainMm: inSi(day.rain, 'depth', units),
      rainFrom: readingSource(day, 'rain'),
      etoMm: inSi(day.eto, 'depth', units),
      etoFrom: readingSource(day, 'eto'),
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

const observedWeek = memoize(
  ({ rain, rainThrough, eto }: PlanWeek, { units }: InUnits): ObservedWeek =>
    present({
      rainMm: inSi(rain, 'depth', units),
      rainThrough: rainThrough === undefined ? undefined : dayNumber(rainThrough),
      etoMm: inSi(eto, 'depth', units),
    }),
);

function byDay<Typed, Seen>(
  record: Readonly<Record<string, Typed>>,
  convert: (value: Typed) => Seen,
): ReadonlyMap<DayNumber, Seen> {
  return new Map(Object.entries(record).map(([day, value]) => [dayNumber(day), convert(value)]));
}
