/** A week's total that somebody typed, and days of its week that a service or a file filled in: these give way. */
import { addDays, dayNumber, isIsoDate, isoDate } from '../../engine/calendar.ts';
import { readingSource, type SourcedReading, withSources } from '../reading-sources.ts';
import type { Plan, PlanDay } from '../schema/plan-schema.ts';
import { weekDays } from '../season-weeks.ts';
import { ownValue, replaced, withKey } from './change.ts';
import { withLog } from './with-log.ts';

export type TotalKind = 'rain' | 'eto';

export interface TypedTotal {
  readonly kind: TotalKind;
  /** A day of the week. */
  readonly week: string;
  /** The day that it was read through; left out, the week's last. */
  readonly through?: string | undefined;
}

/** What of a day's readings says the same as a total does: reference ET follows from temperatures too. */
const READINGS: Readonly<Record<TotalKind, readonly SourcedReading[]>> = {
  rain: ['rain'],
  eto: ['eto', 'minTemperature', 'maxTemperature'],
};

/** The days that the total covers of which a reading was filled in, in order. */
export function filledDays(plan: Plan, total: TypedTotal): readonly string[] {
  return coveredDays(plan, total).filter((day) => filledReadings(plan, day, total.kind).length > 0);
}

/** The plan without what was filled in of these days. */
export function withoutFilledDays(plan: Plan, total: TypedTotal): Plan {
  const days = filledDays(plan, total).reduce((log, day) => {
    const gone = filledReadings(plan, day, total.kind);
    return withKey(log, day, withoutReadings(ownValue(log, day) ?? {}, gone));
  }, plan.log?.days);
  return withLog(plan, { days });
}

function coveredDays({ season }: Plan, { week, through }: TypedTotal): readonly string[] {
  if (!isIsoDate(week)) return [];
  const { first, last } = weekDays(season, week);
  const end = through === undefined || !isIsoDate(through) ? last : Math.min(last, dayNumber(through));
  return Array.from({ length: Math.max(0, end - first + 1) }, (_, day) => addDays(isoDate(first), day));
}

function filledReadings({ log }: Plan, day: string, kind: TotalKind): readonly SourcedReading[] {
  const own = ownValue(log?.days, day) ?? {};
  return READINGS[kind].filter((reading) => readingSource(own, reading) !== undefined);
}

/** Undefined where no reading is left. */
function withoutReadings(day: PlanDay, gone: readonly SourcedReading[]): PlanDay | undefined {
  const bare = replaced(day, Object.fromEntries(gone.map((reading) => [reading, undefined])));
  const left = withSources(bare, (reading) => readingSource(day, reading));
  return Object.keys(left).length === 0 ? undefined : left;
}
