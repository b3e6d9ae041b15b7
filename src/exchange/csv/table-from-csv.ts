/** A table that a person hands over, whichever of those that the kit takes in it is: told by its headings. */
import { runThrough } from '../../engine/run-through.ts';
import type { Season } from '../../engine/season/season.ts';
import type { UnitSystem } from '../../engine/units.ts';
import type { Plan } from '../../plan/schema/plan-schema.ts';
import { hasReading, type WeatherUnits, weatherColumns } from '../weather-file/read-daily-weather.ts';
import type { ImportPreview } from './imported.ts';
import { minutesSteps } from './minutes-from-csv.ts';
import { type Table, tableSteps } from './read-table.ts';
import { zoneColumns } from './season-table.ts';
import type { FormChoice } from './table-form.ts';
import { weatherSteps } from './weather-from-csv.ts';

export type TableKind = 'minutes' | 'rain' | 'weather';

export interface TablePreview extends ImportPreview {
  readonly kind: TableKind;
  /** Rows below the headings. */
  readonly rows: number;
  /** Days outside the season; they change nothing. */
  readonly outside: number;
  /** Units that the weather was read in; undefined for minutes. */
  readonly units: WeatherUnits | undefined;
  /** Units of the columns whose heading names none, for a person to say otherwise; undefined where all do. */
  readonly unnamed: UnitSystem | undefined;
}

/** No table of a known kind: the headings that were found. */
export interface UnknownTable {
  readonly kind: undefined;
  readonly headings: readonly string[];
}

export interface Against {
  readonly plan: Plan;
  readonly season: Season | undefined;
  /** Of columns whose heading names none; left out, the plan's. */
  readonly units?: UnitSystem | undefined;
  /** BCP 47: its language's headings are read beside English ones; left out, English ones alone. */
  readonly locale?: string | undefined;
  /** What a person has said of how it is written. */
  readonly choice?: FormChoice | undefined;
}

export function tableFromCsv(text: string, against: Against): TablePreview | UnknownTable {
  return runThrough(csvSteps(text, against));
}

/** The same with pauses, for a table of any length. */
export function* csvSteps(text: string, against: Against): Generator<void, TablePreview | UnknownTable> {
  return yield* readSteps(yield* tableSteps(text), against);
}

/**
 * The same of a workbook's sheets: the first one that is a table of a known kind. Further sheets with the headings of a season's table are
 * read with it as one, and their lines are counted on.
 */
export function tableFromSheets(texts: readonly string[], against: Against): TablePreview | UnknownTable {
  return runThrough(sheetsSteps(texts, against));
}

/** The same with pauses. */
export function* sheetsSteps(texts: readonly string[], against: Against): Generator<void, TablePreview | UnknownTable> {
  const tables: Table[] = [];
  for (const text of texts) tables.push(yield* tableSteps(text));
  const first = tables.find(({ header }) => isKnown(header, against)) ?? tables[0];
  if (first === undefined) return { kind: undefined, headings: [] };
  const whole = tables.reduce((all, each) => (each !== first && isAlike(all, each) ? joined(all, each) : all), first);
  return yield* readSteps(whole, against);
}

function isKnown(header: readonly string[], { locale = 'en' }: Against): boolean {
  if (zoneColumns(header, locale).zone >= 0) return true;
  const columns = weatherColumns(header, locale);
  return columns.date !== undefined && hasReading(columns);
}

const isAlike = ({ header }: Table, other: Table): boolean =>
  header.length === other.header.length && header.every((heading, at) => heading === other.header[at]);

function joined(table: Table, next: Table): Table {
  const last = table.rows.at(-1)?.line ?? 1;
  return { ...table, rows: [...table.rows, ...next.rows.map((row) => ({ ...row, line: last + row.line }))] };
}

function* readSteps(
  table: Table,
  { plan, season, units = plan.units, locale = 'en', choice = {} }: Against,
): Generator<void, TablePreview | UnknownTable> {
  const rows = table.rows.length;
  if (zoneColumns(table.header, locale).zone >= 0) {
    const preview = yield* minutesSteps(table, { plan, season, locale, choice });
    return { ...preview, kind: 'minutes', rows, outside: 0, units: undefined, unnamed: undefined };
  }
  const columns = weatherColumns(table.header, locale);
  if (columns.date === undefined || !hasReading(columns)) return { kind: undefined, headings: table.header };
  const { rain, min, max } = columns;
  const kind = min === undefined && max === undefined ? 'rain' : 'weather';
  const isUnnamed = [rain, min, max].some((column) => column !== undefined && column.units === undefined);
  return {
    ...(yield* weatherSteps(table, plan, { units, locale, choice })),
    kind,
    rows,
    unnamed: isUnnamed ? units : undefined,
  };
}
