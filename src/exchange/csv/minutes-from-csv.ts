import { runThrough } from '../../engine/run-through.ts';
import type { Season, ZoneSeason } from '../../engine/season/season.ts';
import { zoneFigure, zoneOrigin } from '../../engine/season/zone-week.ts';
import { computingSeason } from '../../plan/compute-season.ts';
import { tryEdit } from '../../plan/edits/apply-edit.ts';
import type { Plan, PlanZone } from '../../plan/schema/plan-schema.ts';
import { MINUTES_A_WEEK } from '../../plan/schema/records.ts';
import type { ImportPreview, RowFault } from './imported.ts';
import { numberIn, readTable, type Table, type TableRow, tooManyCells } from './read-table.ts';
import {
  bareName,
  figuresIn,
  isFirstOfWeek,
  type RecordRow,
  type RowColumns,
  rowsByKind,
  rowsByZone,
  weekColumns,
  weekFaults,
  zoneColumns,
  zonesByName,
} from './season-table.ts';
import { isStretchEnd } from './stretch.ts';
import { decimalSteps, type FormChoice, type TableForm } from './table-form.ts';
import { type Figure, takeMinutes } from './take-minutes.ts';
import { markOrigins, type RecordsInto, readNotes, readWeather, SAME_FIGURE, type WeatherRow } from './week-records.ts';

/** What the rows are read against and into. */
interface MinutesImport extends RecordsInto {
  /** Zones read so far, by id, with their line. */
  readonly lines: Map<string, number>;
  readonly named: ReadonlyMap<string, readonly PlanZone[]>;
  /** Where each zone's runs come from, as its row says, by the zone's id. */
  readonly marks: ReadonlyMap<string, TableRow>;
  readonly originIn: ReturnType<typeof markOrigins>;
  /** Zones of the season. */
  readonly computed: ZonesById;
}

type ZonesById = ReadonlyMap<string, ZoneSeason>;

const zonesById = (season: Season | undefined): ZonesById => new Map(season?.zones.map((zone) => [zone.zone.id, zone]));

/**
 * Reads the rows whose measure is minutes (or that name none) against the plan, and those of the weeks' rain and reference ET and of
 * notes, where there are some. A blank changes nothing. A figure that is the same as what is set by hand already is no change, and
 * neither is what `season`, where it is given, has computed. Minutes are set by hand, but where a row says that they were really run or
 * that the zone was closed they are logged so. With `season`, minutes between what a timer can be set to become the nearest that it can.
 * Zones are found by name, whatever its case. `locale`: BCP 47, whose language the headings may be in; English ones are
 * always read.
 */
export function minutesFromCsv(
  text: string,
  plan: Plan,
  season?: Season,
  locale = 'en',
  choice: FormChoice = {},
): ImportPreview {
  return runThrough(minutesSteps(readTable(text), { plan, season, locale, choice }));
}

export interface MinutesReading {
  readonly plan: Plan;
  readonly season: Season | undefined;
  readonly locale: string;
  readonly choice: FormChoice;
}

/** The same from a table that is read already, with pauses. */
export function* minutesSteps(
  { header, rows, separator }: Table,
  { plan, season, locale, choice }: MinutesReading,
): Generator<void, ImportPreview> {
  const columns = zoneColumns(header, locale);
  const weeks = weekColumns(header, plan);
  if (columns.zone < 0 || weeks.length === 0) {
    const value = header.join(', ').slice(0, 80);
    const fault: RowFault = { code: 'minutes-headings', line: 1, value, weekStart: plan.season.firstDay };
    return { form: { separator, decimal: '.' }, asked: [], edit: undefined, changes: [], faults: [fault] };
  }
  const faults = weekFaults(header, weeks);
  const { minutes: ofMinutes, records } = yield* rowsByKind(rows, columns, locale);
  const weather = weatherRows(records, columns);
  const figures = figuresIn([...ofMinutes, ...weather.map(({ row }) => row)], weeks);
  const decimal = choice.decimal ?? (yield* decimalSteps(figures, separator)).answer;
  const form: TableForm = { separator, decimal: decimal ?? '.' };
  if (decimal === undefined) return { form, asked: ['decimal'], edit: undefined, changes: [], faults: [] };
  const named = zonesByName(plan);
  const into: MinutesImport = {
    plan,
    season,
    locale,
    decimal,
    weeks: weeks.filter(isFirstOfWeek),
    changes: [],
    edits: [],
    faults,
    lines: new Map(),
    named,
    marks: rowsByZone(records, 'mark', columns.zone, named),
    originIn: markOrigins(locale),
    computed: zonesById(season),
  };
  const zones: ZoneRow[] = [];
  for (const [index, row] of ofMinutes.entries()) {
    if (isStretchEnd(index)) yield;
    zones.push(...zoneRow(row, row.cells[columns.zone] ?? '', { header, form, into }));
  }
  // What was set, run and read moves what is computed: that is compared only then.
  yield* figureSteps(zones, into, isMarked);
  for (const row of weather) readWeather(row, into);
  readZoneNotes(rowsByZone(records, 'note', columns.zone, named), into);
  const moved = zonesById(yield* seasonAfter(into));
  yield* figureSteps(zones, into, (figure) => !isMarked(figure) && !isSame(figure, moved));
  const { changes, edits } = into;
  const action = changes.every(({ reading }) => reading === 'minutes') ? 'import-minutes' : 'import-season';
  return {
    form,
    asked: [],
    edit: edits.length === 0 ? undefined : { type: 'together', action, edits },
    changes,
    faults,
  };
}

function weatherRows(records: readonly RecordRow[], { zone, unit }: RowColumns): readonly WeatherRow[] {
  return records.flatMap(({ row, kind }) =>
    (kind === 'rain' || kind === 'eto') && !row.cells[zone] ? [{ row, kind, unit: row.cells[unit] ?? '' }] : [],
  );
}

function readZoneNotes(notes: ReadonlyMap<string, TableRow>, into: MinutesImport): void {
  for (const zone of into.plan.zones) {
    const row = notes.get(zone.id);
    if (row !== undefined) readNotes(row, zone, into);
  }
}

/** The season with what was found so far; as it is where that is nothing, or is refused. */
function* seasonAfter({ plan, season, edits }: MinutesImport): Generator<void, Season | undefined> {
  if (season === undefined || edits.length === 0) return season;
  const result = tryEdit(plan, { type: 'together', edits: [...edits] });
  if (!result.ok) return season;
  const steps = computingSeason(result.plan, season);
  for (let step = steps.next(); ; step = steps.next()) {
    if (step.done === true) return step.value;
    yield;
  }
}

interface ZoneRow {
  readonly row: TableRow;
  readonly zone: PlanZone;
}

interface RowsOf {
  readonly header: readonly string[];
  readonly form: TableForm;
  readonly into: MinutesImport;
}

/** With its zone; nothing where it cannot be read, which is said. */
function zoneRow(row: TableRow, name: string, { header, form, into }: RowsOf): readonly ZoneRow[] {
  const { named, faults, lines } = into;
  const refused = tooManyCells(row, header, form);
  const [zone, ...others] = named.get(bareName(name)) ?? [];
  const before = zone && lines.get(zone.id);
  if (refused !== undefined) faults.push({ line: row.line, ...refused });
  else if (others.length > 0)
    faults.push({ code: 'zone-shared', line: row.line, value: name, zones: others.length + 1 });
  else if (zone === undefined) faults.push({ code: 'zone-unknown', line: row.line, value: name });
  else if (before !== undefined) faults.push({ code: 'zone-twice', line: row.line, value: name, before });
  else {
    lines.set(zone.id, row.line);
    return [{ row, zone }];
  }
  return [];
}

const isMarked = ({ marked }: Figure): boolean => marked !== undefined;

function isSame({ zone, week, minutes }: Figure, zones: ZonesById): boolean {
  const computed = zones.get(zone);
  return computed !== undefined && Math.abs(zoneFigure(computed, 'minutes', week) - minutes) < SAME_FIGURE;
}

/** What goes out is what the season has run, even more than can be set by hand: taken in again unchanged, it changes nothing. */
function isKept(figure: Figure, zones: ZonesById): boolean {
  return isSame(figure, zones) && (figure.marked === undefined || figure.marked === figure.origin);
}

function* figureSteps(
  zones: readonly ZoneRow[],
  into: MinutesImport,
  isWanted: (figure: Figure) => boolean,
): Generator<void> {
  for (const [index, each] of zones.entries()) {
    if (isStretchEnd(index)) yield;
    readFigures(each, into, isWanted);
  }
}

function readFigures({ row, zone }: ZoneRow, into: MinutesImport, isWanted: (figure: Figure) => boolean): void {
  const { decimal, weeks, faults, marks, originIn } = into;
  const { line, cells } = row;
  const computed = into.computed.get(zone.id);
  for (const { index, week, day } of weeks) {
    const value = cells[index] ?? '';
    const minutes = numberIn(value, decimal);
    if (minutes === undefined) continue;
    const marked = computed && originIn(marks.get(zone.id)?.cells[index] ?? '');
    const figure: Figure = { zone: zone.id, week, minutes, marked, origin: computed && zoneOrigin(computed, week) };
    if (isKept(figure, into.computed) || !isWanted(figure)) continue;
    if (!(minutes >= 0 && minutes <= MINUTES_A_WEEK))
      faults.push({ code: 'minutes', line, value, most: MINUTES_A_WEEK });
    else takeMinutes({ ...figure, line, value, day, name: zone.name }, computed, into);
  }
}
