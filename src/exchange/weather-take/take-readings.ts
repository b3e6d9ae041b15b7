/** Days of a record as readings of the season, where nobody wrote any, and as a forecast. */
import { type DayNumber, dayNumber, isoDate } from '../../engine/calendar.ts';
import { type DailyRecord, readingsOn } from '../../engine/record/daily-record.ts';
import { bridged } from '../../engine/record/record-gaps.ts';
import { fromSi, type Quantity, type UnitSystem } from '../../engine/units.ts';
import { ownValue } from '../../plan/edits/change.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import { readWeek } from '../../plan/edits/week-records.ts';
import { type ReadingSource, readingSource, withSources } from '../../plan/reading-sources.ts';
import { sameData } from '../../plan/same-data.ts';
import type { Plan, PlanDay, PlanForecast } from '../../plan/schema/plan-schema.ts';
import { seasonDays, weekDays } from '../../plan/season-weeks.ts';

export interface ReadingsTaken {
  /** One step of history; undefined where nothing would change. */
  readonly edit: Edit | undefined;
  /** Days that get a reading which they had not. */
  readonly filled: number;
  /** Days of which a reading that nobody typed is replaced, and none is new. */
  readonly refreshed: number;
  /** Days of the season whose readings stay, although the record has another figure: typed ones, and a file's before a service's. */
  readonly kept: number;
  /** Days that get an estimate, where a gap is bridged. */
  readonly estimated: number;
  /** Days of the season up to yesterday of which the record has no rain and the plan neither. */
  readonly missing: number;
}

export interface ReadingsChoice {
  /** What the record is from, as the plan will say of each reading. */
  readonly source: 'service' | 'file';
  /** Whether gaps of up to five days in temperatures and reference ET are filled by a straight line: as a person agreed. */
  readonly bridge?: boolean;
}

/** What a reading takes the place of, besides nothing. What was typed is never among it. */
const REPLACES: Readonly<Record<ReadingSource, readonly ReadingSource[]>> = {
  file: ['file', 'service', 'estimate'],
  service: ['service', 'estimate'],
  estimate: ['estimate'],
};

const FIELDS = {
  rain: ['rainMm', 'depth'],
  eto: ['etoMm', 'depth'],
  minTemperature: ['minTemperatureC', 'temperature'],
  maxTemperature: ['maxTemperatureC', 'temperature'],
} as const satisfies Partial<Record<keyof PlanDay, readonly [keyof DailyRecord['columns'], Quantity]>>;

type Field = keyof typeof FIELDS;

/**
 * Fills the log of the days before `today`, in the season, and says of each reading where it comes from. What was typed wins: a day's own
 * reading, and the total of a week or of its days up to the one it was read through. What came from a service or a file before is
 * replaced, a file's not by a service. Temperatures are left out where the day has reference ET, read or typed.
 */
export function takeReadings(
  record: DailyRecord,
  plan: Plan,
  today: DayNumber,
  { source, bridge = false }: ReadingsChoice,
): ReadingsTaken {
  const { first, last } = seasonDays(plan.season);
  const whole = bridge ? bridged(record) : record;
  const edits: Edit[] = [];
  const counts = { filled: 0, refreshed: 0, kept: 0, estimated: 0, missing: 0 };
  for (let day = first; day <= Math.min(last, today - 1); day += 1) {
    const before = plan.log?.days?.[isoDate(day)] ?? {};
    const known = readOn(record, day, plan.units);
    const read = readOn(whole, day, plan.units);
    const sourceOf = (field: Field): ReadingSource => (known[field] === undefined ? 'estimate' : source);
    const free = fieldsOf(read).filter((field) => isFree(field, day, plan, sourceOf(field)));
    counts.kept += Number(fieldsOf(known).some((field) => !free.includes(field) && stays(field, known, before)));
    counts.missing += Number([read.rain, before.rain].every(isNone) && isFree('rain', day, plan, source));
    const weather = withRead(before, read, free, sourceOf);
    if (sameData(weather, before) || isSwapped(weather)) continue;
    counts[free.some((field) => before[field] === undefined) ? 'filled' : 'refreshed'] += 1;
    counts.estimated += Number(free.some((field) => sourceOf(field) === 'estimate'));
    edits.push({ type: 'set-day-weather', day: isoDate(day), weather });
  }
  const edit: Edit | undefined = edits.length === 0 ? undefined : { type: 'together', action: 'take-readings', edits };
  return { edit, ...counts };
}

const isNone = (value: number | undefined): boolean => value === undefined;

/** A day with some of what was read of it. */
function withRead(
  before: PlanDay,
  read: Read,
  fields: readonly Field[],
  sourceOf: (field: Field) => ReadingSource,
): PlanDay {
  const after = { ...before, ...Object.fromEntries(fields.map((field) => [field, read[field]])) };
  return withSources(after, (field) => (fields.includes(field) ? sourceOf(field) : readingSource(before, field)));
}

/** Whether another figure is kept; temperatures that a service's reference ET makes needless are not asked for. */
function stays(field: Field, known: Read, before: PlanDay): boolean {
  if (known[field] === before[field]) return false;
  return !isTemperature(field) || readingSource(before, 'eto') === undefined;
}

const isTemperature = (field: Field): boolean => field === 'minTemperature' || field === 'maxTemperature';

type Read = { readonly [Name in Field]?: number };

const fieldsOf = (read: Read): readonly Field[] => Object.keys(read) as Field[];

function isSwapped({ minTemperature, maxTemperature }: PlanDay): boolean {
  return minTemperature !== undefined && maxTemperature !== undefined && maxTemperature < minTemperature;
}

function readOn(record: DailyRecord, day: DayNumber, units: UnitSystem): Read {
  const index = day - record.firstDay;
  if (index < 0 || index >= record.dayCount) return {};
  const readings = readingsOn(record, index);
  const found: { [Name in Field]?: number } = {};
  for (const field of Object.keys(FIELDS) as Field[]) {
    const [reading, quantity] = FIELDS[field];
    const value = readings[reading];
    if (value !== undefined) found[field] = inUnits(value, quantity, units);
  }
  if (found.eto !== undefined) {
    delete found.minTemperature;
    delete found.maxTemperature;
  }
  return found;
}

/** Whether a reading may stand there: where nobody wrote one, of the day or of its week, or one that such a source replaces. */
function isFree(field: Field, day: DayNumber, { log, season }: Plan, source: ReadingSource): boolean {
  const own = log?.days?.[isoDate(day)] ?? {};
  const replaced = (other: Field): boolean => {
    const from = readingSource(own, other);
    return own[other] === undefined || (from !== undefined && REPLACES[source].includes(from));
  };
  if (!replaced(field)) return false;
  if (isTemperature(field) && own.eto !== undefined) return false;
  if (field === 'eto' && !(replaced('minTemperature') && replaced('maxTemperature'))) return false;
  const week = readWeek(log?.weeks, season, isoDate(day));
  if (field === 'rain' && week?.rain !== undefined) {
    const through = week.rainThrough === undefined ? weekDays(season, isoDate(day)).last : dayNumber(week.rainThrough);
    return day > through;
  }
  return field !== 'eto' || week?.eto === undefined;
}

/**
 * Rain and reference ET of today and later, as a forecast that was issued today; what was typed of it today stays. Undefined where the
 * record has none in the season, or nothing would change.
 */
export function takeForecast(
  record: DailyRecord,
  plan: Plan,
  today: DayNumber,
  { source }: Pick<ReadingsChoice, 'source'>,
): Edit | undefined {
  const { first, last } = seasonDays(plan.season);
  const issued = isoDate(today);
  const before = plan.log?.forecasts?.find((forecast) => forecast.issued === issued)?.days ?? {};
  const days: { [day: string]: ForecastDay } = { ...before };
  for (let day = Math.max(today, first); day <= last; day += 1) {
    const { rain, eto } = readOn(record, day, plan.units);
    const known = ownValue(before, isoDate(day));
    const isTyped = known !== undefined && known.source === undefined;
    if (isTyped || (rain === undefined && eto === undefined)) continue;
    days[isoDate(day)] = { ...(rain === undefined ? {} : { rain }), ...(eto === undefined ? {} : { eto }), source };
  }
  const sorted = Object.fromEntries(Object.entries(days).sort(([one], [other]) => (one < other ? -1 : 1)));
  return sameData(sorted, before) ? undefined : { type: 'set-forecast', issued, days: sorted };
}

type ForecastDay = PlanForecast['days'][string];

/** Thousandths of an inch, hundredths of a millimetre, tenths of a degree: no finer than such figures are known. */
function inUnits(value: number, quantity: Quantity, units: UnitSystem): number {
  const digits = quantity === 'temperature' ? 1 : units === 'us' ? 3 : 2;
  return Number(fromSi(value, quantity, units).toFixed(digits));
}
