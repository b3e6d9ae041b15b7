/** Minutes set by hand from a CSV table: a row for each zone, a column for each week, as `seasonToCsv` writes it. */
import { dayNumber, isIsoDate, isoDate } from '../../engine/calendar.ts';
import type { MinutesOrigin, Season, ZoneSeason } from '../../engine/season/season.ts';
import { zoneFigure, zoneOrigin } from '../../engine/season/zone-week.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import { readWeek } from '../../plan/edits/week-records.ts';
import type { Plan, PlanZone } from '../../plan/schema/plan-schema.ts';
import { MINUTES_A_WEEK } from '../../plan/schema/records.ts';
import type { ImportChange, ImportPreview, RowFault } from './imported.ts';
import { numberIn, readTable, type Table, type TableRow } from './read-table.ts';

/** As close as a file of this kit's own has it. */
const SAME_MINUTES = 0.0006;

interface WeekColumn {
  readonly place: number;
  /** Week of the season, from 0. */
  readonly week: number;
  /** Its first day. */
  readonly day: string;
}

interface ZoneChange extends ImportChange {
  readonly id: string;
}

/** What the rows are read against and into. */
interface Reading {
  readonly plan: Plan;
  readonly season: Season | undefined;
  readonly weeks: readonly WeekColumn[];
  readonly changes: ZoneChange[];
  readonly faults: RowFault[];
  /** Zones read so far, by id, with their line. */
  readonly lines: Map<string, number>;
}

/**
 * Reads the rows whose measure is minutes (or that name none) against the plan. A blank changes nothing. A figure that is
 * the same as what is set by hand already is no change, and neither is what `season`, where it is given, has computed.
 * Zones are found by name, whatever its case.
 */
export function minutesFromCsv(text: string, plan: Plan, season?: Season): ImportPreview {
  return minutesInTable(readTable(text), plan, season);
}

/** The same from a table that is read already. */
export function minutesInTable({ header, rows }: Table, plan: Plan, season?: Season): ImportPreview {
  const places = { zone: find(header, 'zone'), planting: find(header, 'planting'), measure: find(header, 'measure') };
  const weeks = weekColumns(header, plan);
  if (places.zone < 0 || weeks.length === 0) {
    const expected = 'a heading Zone, and headings with the first day of weeks of the season, such as 2027-04-05';
    return { edit: undefined, changes: [], faults: [{ line: 1, value: header.join(', ').slice(0, 80), expected }] };
  }
  const isFirst = ({ week }: WeekColumn, at: number) => weeks.findIndex((other) => other.week === week) === at;
  const faults = weeks
    .filter((column, at) => !isFirst(column, at))
    .map(({ place }) => ({ line: 1, value: header[place] ?? '', expected: 'each week of the season once' }));
  faults.push(
    ...header
      .filter((heading, place) => isIsoDate(heading) && !weeks.some((column) => column.place === place))
      .map((value) => ({ line: 1, value, expected: 'a week of the season' })),
  );
  const reading: Reading = { plan, season, weeks: weeks.filter(isFirst), changes: [], faults, lines: new Map() };
  for (const row of rows) {
    if (row.cells[places.planting]) continue;
    if (places.measure >= 0 && !/min/i.test(row.cells[places.measure] ?? '')) continue;
    readRow(row, row.cells[places.zone] ?? '', reading);
  }
  const { changes } = reading;
  const edits = changes.map<Edit>(({ id, day, to }) => ({ type: 'set-minutes', zone: id, week: day, minutes: to }));
  const label = 'Minutes from a file';
  return { edit: edits.length === 0 ? undefined : { type: 'together', label, edits }, changes, faults };
}

function readRow(row: TableRow, name: string, reading: Reading): void {
  const { plan, faults, lines } = reading;
  const [zone, ...others] = zonesNamed(plan, name);
  if (others.length > 0) {
    faults.push({
      line: row.line,
      value: name,
      expected: `a name of one zone: ${others.length + 1} zones have this one`,
    });
    return;
  }
  if (zone === undefined) {
    faults.push({ line: row.line, value: name, expected: 'the name of a zone of the plan' });
    return;
  }
  const before = lines.get(zone.id);
  if (before === undefined) readFigures(row, zone, reading);
  else faults.push({ line: row.line, value: name, expected: `each zone once: line ${before} has it too` });
}

function readFigures({ line, cells }: TableRow, zone: PlanZone, reading: Reading): void {
  const { plan, season, weeks, changes, faults, lines } = reading;
  lines.set(zone.id, line);
  const computed = season?.zones.find((each) => each.zone.id === zone.id);
  for (const { place, week, day } of weeks) {
    const value = cells[place] ?? '';
    const to = numberIn(value);
    if (to === undefined) continue;
    if (!(to >= 0 && to <= MINUTES_A_WEEK)) {
      faults.push({ line, value, expected: `minutes of a week, from 0 to ${MINUTES_A_WEEK}` });
      continue;
    }
    const from = readWeek(plan.choices?.[zone.id], plan.season, day)?.minutes;
    // What goes out is what the season has run: taken in again unchanged, it changes nothing.
    const isSame = isComputed(to, computed, week) || (from !== undefined && Math.abs(from - to) < SAME_MINUTES);
    if (isSame) continue;
    const held = computed && HELD[zoneOrigin(computed, week)];
    if (held === undefined) changes.push({ id: zone.id, reading: 'minutes', zone: zone.name, day, from, to });
    else faults.push({ line, value, expected: `no minutes for ${day}: ${held}` });
  }
}

/** Weeks in which minutes set by hand would change nothing, as a person is told. */
const HELD: Partial<Record<MinutesOrigin, string>> = {
  closed: 'the zone is closed then',
  run: 'those really run are noted',
};

function isComputed(minutes: number, zone: ZoneSeason | undefined, week: number): boolean {
  return zone !== undefined && Math.abs(zoneFigure(zone, 'minutes', week) - minutes) < SAME_MINUTES;
}

function weekColumns(header: readonly string[], { season }: Plan): readonly WeekColumn[] {
  const first = dayNumber(season.firstDay);
  return header.flatMap((heading, place) => {
    if (!isIsoDate(heading)) return [];
    const week = Math.floor((dayNumber(heading) - first) / 7);
    return week >= 0 && week < season.weeks ? [{ place, week, day: isoDate(first + 7 * week) }] : [];
  });
}

function zonesNamed(plan: Plan, name: string): readonly PlanZone[] {
  return plan.zones.filter((zone) => zone.name.trim().toLowerCase() === name.toLowerCase());
}

function find(header: readonly string[], word: string): number {
  return header.findIndex((heading) => heading.toLowerCase() === word);
}
