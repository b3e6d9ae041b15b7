/** Rows of a table of the season that are no minutes: rain and reference ET of its weeks, notes, and where each run comes from. */
import { dayNumber, isoDate } from '../../engine/calendar.ts';
import type { MinutesOrigin, Season } from '../../engine/season/season.ts';
import { fromSi, toSi, type UnitSystem } from '../../engine/units.ts';
import { weekSum } from '../../engine/weather.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import { withoutFilledDays } from '../../plan/edits/filled-days.ts';
import { readWeek } from '../../plan/edits/week-records.ts';
import type { Plan, PlanZone } from '../../plan/schema/plan-schema.ts';
import { boundsOf } from '../../plan/schema/quantity.ts';
import { NOTE_LENGTH } from '../../plan/schema/text.ts';
import { weekDays } from '../../plan/season-weeks.ts';
import type { ImportChange, RowFault, RowFaultReason } from './imported.ts';
import { bareWord, headingWords, readHeading } from './read-heading.ts';
import { numberIn, type TableRow } from './read-table.ts';
import type { DecimalMark } from './table-form.ts';

export interface WeekColumn {
  /** Index of the column. */
  readonly index: number;
  /** Week of the season, from 0. */
  readonly week: number;
  /** Its first day. */
  readonly day: string;
}

/** What a row is of, by its measure. */
export type RecordKind = 'rain' | 'eto' | 'note' | 'mark';

/** Figures are as close as a file of this kit's own has them. */
export const SAME_FIGURE = 0.0006;

/** Tells of a measure which of them it is; undefined for another. */
export function recordKinds(locale: string): (measure: string) => RecordKind | undefined {
  const words = headingWords(locale);
  const kinds = new Map<string, RecordKind>();
  for (const { more } of words) {
    kinds.set(bareWord(more.rainFell), 'rain');
    kinds.set(bareWord(more.eto), 'eto');
    kinds.set(bareWord(more.note), 'note');
    kinds.set(bareWord(more.mark), 'mark');
  }
  return (measure) => kinds.get(bareWord(measure));
}

/** Tells what a mark says of a run; undefined where it says no more than that it was computed. */
export function markOrigins(locale: string): (mark: string) => Exclude<MinutesOrigin, 'computed'> | undefined {
  const origins = (['hand-set', 'run', 'closed'] as const).map((origin) => ({
    origin,
    words: headingWords(locale).map(({ marks }) => bareWord(marks[origin])),
  }));
  return (mark) => {
    const said = bareWord(mark);
    return origins.find(({ words }) => words.some((word) => said.startsWith(word)))?.origin;
  };
}

export interface WeatherRow {
  readonly row: TableRow;
  readonly kind: 'rain' | 'eto';
  /** What stands in the column of units. */
  readonly unit: string;
}

export interface RecordsInto {
  readonly plan: Plan;
  readonly season: Season | undefined;
  readonly locale: string;
  readonly decimal: DecimalMark;
  readonly weeks: readonly WeekColumn[];
  readonly changes: ImportChange[];
  readonly edits: Edit[];
  readonly faults: RowFault[];
}

/** Totals of weeks; those that the season has already, read or usual, are no change. */
export function readWeather(weather: WeatherRow, into: RecordsInto): void {
  const { plan, decimal, weeks, locale, faults, changes, edits } = into;
  const units = systemOf(weather.unit, plan.units, locale);
  for (const { index, week, day } of weeks) {
    const value = weather.row.cells[index] ?? '';
    const written = numberIn(value, decimal);
    const now = totalNow(weather.kind, week, into);
    if (written === undefined || isSame(written, now, units)) continue;
    const refused = refusalOf(written, { day, kind: weather.kind, units, plan });
    if (refused !== undefined) {
      faults.push({ ...refused, line: weather.row.line, value });
      continue;
    }
    const to = units === plan.units ? written : fromSi(toSi(written, 'depth', units), 'depth', plan.units);
    const from = now === undefined ? undefined : fromSi(now, 'depth', plan.units);
    changes.push({ reading: weather.kind === 'rain' ? 'weekRain' : 'weekEto', day, from, to });
    edits.push(
      weather.kind === 'rain'
        ? { type: 'set-week-rain', week: day, rain: to }
        : { type: 'set-week-eto', week: day, eto: to },
    );
  }
}

/** `now`: mm. */
const isSame = (written: number, now: number | undefined, units: UnitSystem): boolean =>
  now !== undefined && Math.abs(fromSi(now, 'depth', units) - written) < SAME_FIGURE;

interface Total {
  readonly day: string;
  readonly kind: 'rain' | 'eto';
  readonly units: UnitSystem;
  readonly plan: Plan;
}

function refusalOf(written: number, { day, kind, units, plan }: Total): RowFaultReason | undefined {
  const [low, high] = boundsOf('depth', units);
  if (!(written >= low && written <= high)) return { code: kind, low, high, units };
  return isReadByDay(plan, day, kind) ? { code: 'read-by-day', weekStart: dayNumber(day) } : undefined;
}

function systemOf(unit: string, otherwise: UnitSystem, locale: string): UnitSystem {
  const read = readHeading(`x ${unit}`, locale).unit;
  if (read === 'mm') return 'metric';
  return read === 'in' ? 'us' : otherwise;
}

/** mm; undefined where nothing says it. */
function totalNow(kind: 'rain' | 'eto', week: number, { season }: RecordsInto): number | undefined {
  return season && weekSum(season.weather[kind].mm, week);
}

/** Reference ET of a day is read too where its temperatures are. What was filled in gives way to a total. */
function isReadByDay(plan: Plan, week: string, kind: 'rain' | 'eto'): boolean {
  const { first } = weekDays(plan.season, week);
  const bare = withoutFilledDays(plan, { kind, week });
  return Array.from({ length: 7 }, (_, day) => bare.log?.days?.[isoDate(first + day)]).every(
    (day) =>
      day?.[kind] !== undefined ||
      (kind === 'eto' && day?.minTemperature !== undefined && day.maxTemperature !== undefined),
  );
}

export function readNotes(row: TableRow, zone: PlanZone, { plan, weeks, changes, edits, faults }: RecordsInto): void {
  for (const { index, day } of weeks) {
    const to = row.cells[index] ?? '';
    const from = readWeek(plan.choices?.[zone.id], plan.season, day)?.note;
    if (to === '' || isSameText(from ?? '', to)) continue;
    if (to.length > NOTE_LENGTH) {
      faults.push({ code: 'note-long', line: row.line, value: to.slice(0, 80), most: NOTE_LENGTH });
      continue;
    }
    changes.push({ reading: 'note', zone: zone.name, day, from, to });
    edits.push({ type: 'set-note', zone: zone.id, week: day, note: to });
  }
}

/** Tables have blanks at the ends of cells taken off, and one kind of line break. */
const isSameText = (one: string, other: string): boolean => plain(one) === plain(other);
const plain = (text: string): string => text.replaceAll(/\r\n?/g, '\n').trim();
