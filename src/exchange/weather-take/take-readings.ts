/** Days of a record as readings of the season, where nobody wrote any, and as a forecast. */
import { type DayNumber, dayNumber, isoDate } from '../../engine/calendar.ts';
import { type DailyRecord, readingsOn } from '../../engine/record/daily-record.ts';
import { fromSi, type Quantity, type UnitSystem } from '../../engine/units.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import { readWeek } from '../../plan/edits/week-records.ts';
import type { Plan, PlanDay, PlanForecast } from '../../plan/schema/plan-schema.ts';
import { seasonDays, weekDays } from '../../plan/season-weeks.ts';

export interface ReadingsTaken {
  /** One step of history; undefined where nothing would change. */
  readonly edit: Edit | undefined;
  /** Days of which something is filled in. */
  readonly filled: number;
  /** Days of the season whose typed readings stay although the record has another figure. */
  readonly typed: number;
  /** Days of the season up to yesterday of which the record has no rain and the plan neither. */
  readonly missing: number;
}

const FIELDS = {
  rain: ['rainMm', 'depth'],
  eto: ['etoMm', 'depth'],
  minTemperature: ['minTemperatureC', 'temperature'],
  maxTemperature: ['maxTemperatureC', 'temperature'],
} as const satisfies Partial<Record<keyof PlanDay, readonly [keyof DailyRecord['columns'], Quantity]>>;

type Field = keyof typeof FIELDS;

/**
 * Fills the log of the days before `today`, in the season. What was typed wins: a day's own reading, and the total of a week or of
 * its days up to the one it was read through. Temperatures are left out where the day has reference ET, read or typed.
 */
export function takeReadings(record: DailyRecord, plan: Plan, today: DayNumber): ReadingsTaken {
  const { first, last } = seasonDays(plan.season);
  const edits: Edit[] = [];
  let [typed, missing] = [0, 0];
  for (let day = first; day <= Math.min(last, today - 1); day += 1) {
    const before = plan.log?.days?.[isoDate(day)] ?? {};
    const read = readOn(record, day, plan.units);
    const free = Object.entries(read).filter(([field]) => isFree(field as Field, day, plan));
    if (free.length < Object.keys(read).length) typed += 1;
    if (read.rain === undefined && isFree('rain', day, plan)) missing += 1;
    const weather = { ...before, ...Object.fromEntries(free) };
    if (free.length > 0 && !isSwapped(weather)) edits.push({ type: 'set-day-weather', day: isoDate(day), weather });
  }
  const edit: Edit | undefined = edits.length === 0 ? undefined : { type: 'together', action: 'take-readings', edits };
  return { edit, filled: edits.length, typed, missing };
}

function isSwapped({ minTemperature, maxTemperature }: PlanDay): boolean {
  return minTemperature !== undefined && maxTemperature !== undefined && maxTemperature < minTemperature;
}

function readOn(record: DailyRecord, day: DayNumber, units: UnitSystem): { readonly [Name in Field]?: number } {
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

/** Whether nobody wrote it, of the day or of its week. */
function isFree(field: Field, day: DayNumber, { log, season }: Plan): boolean {
  const own = log?.days?.[isoDate(day)];
  if (own?.[field] !== undefined) return false;
  const isTemperature = field === 'minTemperature' || field === 'maxTemperature';
  if (isTemperature && own?.eto !== undefined) return false;
  if (field === 'eto' && (own?.minTemperature ?? own?.maxTemperature) !== undefined) return false;
  const week = readWeek(log?.weeks, season, isoDate(day));
  if (field === 'rain' && week?.rain !== undefined) {
    const through = week.rainThrough === undefined ? weekDays(season, isoDate(day)).last : dayNumber(week.rainThrough);
    return day > through;
  }
  return field !== 'eto' || week?.eto === undefined;
}

/** Rain and reference ET of today and later, as a forecast that was issued today. Undefined where the record has none in the season. */
export function takeForecast(record: DailyRecord, plan: Plan, today: DayNumber): Edit | undefined {
  const { first, last } = seasonDays(plan.season);
  const days: { [day: string]: PlanForecast['days'][string] } = {};
  for (let day = Math.max(today, first); day <= last; day += 1) {
    const { rain, eto } = readOn(record, day, plan.units);
    if (rain === undefined && eto === undefined) continue;
    days[isoDate(day)] = { ...(rain === undefined ? {} : { rain }), ...(eto === undefined ? {} : { eto }) };
  }
  return Object.keys(days).length === 0 ? undefined : { type: 'set-forecast', issued: isoDate(today), days };
}

/** Thousandths of an inch, hundredths of a millimetre, tenths of a degree: no finer than such figures are known. */
function inUnits(value: number, quantity: Quantity, units: UnitSystem): number {
  const digits = quantity === 'temperature' ? 1 : units === 'us' ? 3 : 2;
  return Number(fromSi(value, quantity, units).toFixed(digits));
}
