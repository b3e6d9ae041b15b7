/** How a table of a season is laid out: where its columns stand, and what its rows are of. */
import { dayNumber, isIsoDate, isoDate } from '../../engine/calendar.ts';
import { oneLine } from '../../plan/schema/name-text.ts';
import type { Plan, PlanZone } from '../../plan/schema/plan-schema.ts';
import type { RowFault } from './imported.ts';
import { bareWord, headingWords } from './read-heading.ts';
import type { TableRow } from './read-table.ts';
import { isStretchEnd } from './stretch.ts';
import { type RecordKind, recordKinds, type WeekColumn } from './week-records.ts';

export interface RecordRow {
  readonly row: TableRow;
  readonly kind: RecordKind;
}

/** Rows of minutes, and those of records, where rows have a measure. */
export function* rowsByKind(
  rows: readonly TableRow[],
  { planting, measure }: RowColumns,
  locale: string,
): Generator<void, { readonly minutes: readonly TableRow[]; readonly records: readonly RecordRow[] }> {
  const isOfMinutes = minutesMeasure(locale);
  const kindOf = recordKinds(locale);
  const minutes: TableRow[] = [];
  const records: RecordRow[] = [];
  for (const [index, row] of rows.entries()) {
    if (isStretchEnd(index)) yield;
    const said = row.cells[measure] ?? '';
    if (row.cells[planting]) continue;
    const kind = measure < 0 ? undefined : kindOf(said);
    if (kind !== undefined) records.push({ row, kind });
    else if (measure < 0 || isOfMinutes(said)) minutes.push(row);
  }
  return { minutes, records };
}

/** The first row of each zone that has its name alone. */
export function rowsByZone(
  records: readonly RecordRow[],
  wanted: RecordKind,
  column: number,
  named: ReadonlyMap<string, readonly PlanZone[]>,
): ReadonlyMap<string, TableRow> {
  const found = new Map<string, TableRow>();
  for (const { row, kind } of records) {
    const [zone, ...others] = kind === wanted ? (named.get(bareName(row.cells[column] ?? '')) ?? []) : [];
    if (zone !== undefined && others.length === 0 && !found.has(zone.id)) found.set(zone.id, row);
  }
  return found;
}

export const isFirstOfWeek = ({ week }: WeekColumn, at: number, weeks: readonly WeekColumn[]) =>
  weeks.findIndex((other) => other.week === week) === at;

/** Headings of a week that another has already, and of days outside the season. */
export function weekFaults(header: readonly string[], weeks: readonly WeekColumn[]): RowFault[] {
  const twice = weeks.filter((...column) => !isFirstOfWeek(...column)).map(({ index }) => header[index] ?? '');
  const outside = header.filter(
    (heading, index) => isIsoDate(heading) && !weeks.some((column) => column.index === index),
  );
  return [
    ...twice.map((value): RowFault => ({ code: 'week-twice', line: 1, value })),
    ...outside.map((value): RowFault => ({ code: 'week-outside', line: 1, value })),
  ];
}

export function weekColumns(header: readonly string[], { season }: Plan): readonly WeekColumn[] {
  const first = dayNumber(season.firstDay);
  return header.flatMap((heading, index) => {
    if (!isIsoDate(heading)) return [];
    const week = Math.floor((dayNumber(heading) - first) / 7);
    return week >= 0 && week < season.weeks ? [{ index, week, day: isoDate(first + 7 * week) }] : [];
  });
}

/** A table that an earlier version wrote may have a name in several lines. */
export const bareName = (name: string) => oneLine(name).toLowerCase();

export function zonesByName({ zones }: Plan): ReadonlyMap<string, readonly PlanZone[]> {
  const named = new Map<string, PlanZone[]>();
  for (const zone of zones) {
    const name = bareName(zone.name);
    named.set(name, [...(named.get(name) ?? []), zone]);
  }
  return named;
}

export function* figuresIn(rows: readonly TableRow[], weeks: readonly WeekColumn[]): Generator<string> {
  for (const { cells } of rows) for (const { index } of weeks) yield cells[index] ?? '';
}

/** Indexes of the columns that say of what a row is; -1 for one that is not there. */
export function zoneColumns(header: readonly string[], locale: string): RowColumns {
  const words = headingWords(locale);
  const headings = header.map(bareWord);
  const index = (column: RowColumn) => {
    const names = words.map(({ headings: own }) => bareWord(own[column]));
    return headings.findIndex((heading) => names.includes(heading));
  };
  return { zone: index('zone'), planting: index('planting'), measure: index('measure'), unit: index('unit') };
}

type RowColumn = 'zone' | 'planting' | 'measure' | 'unit';
export type RowColumns = Readonly<Record<RowColumn, number>>;

/** Tells whether a row is of minutes, by its measure; in English in a person's own words too. */
function minutesMeasure(locale: string): (measure: string) => boolean {
  const words = headingWords(locale);
  const minutes = new Set(words.map(({ measures }) => bareWord(measures.minutes)));
  const others = new Set(
    words.flatMap(({ measures, more }) => [...Object.values(measures), ...Object.values(more)].map(bareWord)),
  );
  return (measure) => {
    const word = bareWord(measure);
    return minutes.has(word) || (!others.has(word) && /min/i.test(measure));
  };
}
