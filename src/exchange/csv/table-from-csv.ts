/** A table that a person hands over, whichever of those that the kit takes in it is: told by its headings. */
import type { Season } from '../../engine/season/season.ts';
import type { UnitSystem } from '../../engine/units.ts';
import type { Plan } from '../../plan/schema/plan-schema.ts';
import { hasReading, type WeatherUnits, weatherColumns } from '../weather-file/read-daily-weather.ts';
import type { ImportPreview } from './imported.ts';
import { minutesInTable, zoneColumns } from './minutes-from-csv.ts';
import { readTable } from './read-table.ts';
import type { FormChoice } from './table-form.ts';
import { weatherInTable } from './weather-from-csv.ts';

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

export function tableFromCsv(
  text: string,
  { plan, season, units = plan.units, locale = 'en', choice = {} }: Against,
): TablePreview | UnknownTable {
  const table = readTable(text);
  const rows = table.rows.length;
  if (zoneColumns(table.header, locale).zone >= 0) {
    const preview = minutesInTable(table, { plan, season, locale, choice });
    return { ...preview, kind: 'minutes', rows, outside: 0, units: undefined, unnamed: undefined };
  }
  const columns = weatherColumns(table.header, locale);
  if (columns.date === undefined || !hasReading(columns)) return { kind: undefined, headings: table.header };
  const { rain, min, max } = columns;
  const kind = min === undefined && max === undefined ? 'rain' : 'weather';
  const isUnnamed = [rain, min, max].some((column) => column !== undefined && column.units === undefined);
  return {
    ...weatherInTable(table, plan, { units, locale, choice }),
    kind,
    rows,
    unnamed: isUnnamed ? units : undefined,
  };
}
