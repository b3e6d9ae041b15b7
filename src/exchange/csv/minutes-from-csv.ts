/** Minutes set by hand from a CSV table: a row for each zone, a column for each week, as `seasonToCsv` writes it. */
import { dayNumber, isIsoDate, isoDate } from '../../engine/calendar.ts';
import type { MinutesOrigin, Season, ZoneSeason } from '../../engine/season/season.ts';
import { zoneFigure, zoneOrigin } from '../../engine/season/zone-week.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import { readWeek } from '../../plan/edits/week-records.ts';
import type { Plan, PlanZone } from '../../plan/schema/plan-schema.ts';
import { MINUTES_A_WEEK } from '../../plan/schema/records.ts';
import type { ImportChange, ImportPreview, RowFault } from './imported.ts';
import { bareWord, headingWords } from './read-heading.ts';
import { numberIn, readTable, type Table, type TableRow, tooManyCells } from './read-table.ts';
import { type DecimalMark, decimalOf, type FormChoice, type TableForm } from './table-form.ts';

/** As close as a file of this kit's own has it. */
const SAME_MINUTES = 0.0006;

interface WeekColumn {
  /** Index of the column. */
  readonly index: number;
  /** Week of the season, from 0. */
  readonly week: number;
  /** Its first day. */
  readonly day: string;
}

interface ZoneChange extends ImportChange {
  readonly id: string;
}

/** What the rows are read against and into. */
interface MinutesImport {
  readonly plan: Plan;
  readonly season: Season | undefined;
  readonly decimal: DecimalMark;
  readonly weeks: readonly WeekColumn[];
  readonly changes: ZoneChange[];
  readonly faults: RowFault[];
  /** Zones read so far, by id, with their line. */
  readonly lines: Map<string, number>;
}

/**
 * Reads the rows whose measure is minutes (or that name none) against the plan. A blank changes nothing. A figure that is
 * the same as what is set by hand already is no change, and neither is what `season`, where it is given, has computed.
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
  return minutesInTable(readTable(text), { plan, season, locale, choice });
}

export interface MinutesReading {
  readonly plan: Plan;
  readonly season: Season | undefined;
  readonly locale: string;
  readonly choice: FormChoice;
}

/** The same from a table that is read already. */
export function minutesInTable(
  { header, rows, separator }: Table,
  { plan, season, locale, choice }: MinutesReading,
): ImportPreview {
  const columns = zoneColumns(header, locale);
  const weeks = weekColumns(header, plan);
  if (columns.zone < 0 || weeks.length === 0) {
    const value = header.join(', ').slice(0, 80);
    const fault: RowFault = { code: 'minutes-headings', line: 1, value, weekStart: plan.season.firstDay };
    return { form: { separator, decimal: '.' }, asked: [], edit: undefined, changes: [], faults: [fault] };
  }
  const isFirst = ({ week }: WeekColumn, at: number) => weeks.findIndex((other) => other.week === week) === at;
  const faults = weeks
    .filter((column, at) => !isFirst(column, at))
    .map(({ index }): RowFault => ({ code: 'week-twice', line: 1, value: header[index] ?? '' }));
  faults.push(
    ...header
      .filter((heading, index) => isIsoDate(heading) && !weeks.some((column) => column.index === index))
      .map((value): RowFault => ({ code: 'week-outside', line: 1, value })),
  );
  const ofMinutes = rows.filter(
    ({ cells }) => !cells[columns.planting] && (columns.measure < 0 || isMinutes(cells[columns.measure] ?? '', locale)),
  );
  const figures = ofMinutes.flatMap(({ cells }) => weeks.map(({ index }) => cells[index] ?? ''));
  const decimal = choice.decimal ?? decimalOf(figures, separator).answer;
  const form: TableForm = { separator, decimal: decimal ?? '.' };
  if (decimal === undefined) return { form, asked: ['decimal'], edit: undefined, changes: [], faults: [] };
  const into: MinutesImport = {
    plan,
    season,
    decimal,
    weeks: weeks.filter(isFirst),
    changes: [],
    faults,
    lines: new Map(),
  };
  for (const row of ofMinutes) {
    const refused = tooManyCells(row, header, form);
    if (refused !== undefined) faults.push({ line: row.line, ...refused });
    else readRow(row, row.cells[columns.zone] ?? '', into);
  }
  const { changes } = into;
  const edits = changes.map<Edit>(({ id, day, to }) => ({ type: 'set-minutes', zone: id, week: day, minutes: to }));
  return {
    form,
    asked: [],
    edit: edits.length === 0 ? undefined : { type: 'together', action: 'import-minutes', edits },
    changes,
    faults,
  };
}

function readRow(row: TableRow, name: string, into: MinutesImport): void {
  const { plan, faults, lines } = into;
  const [zone, ...others] = zonesNamed(plan, name);
  if (others.length > 0) {
    faults.push({ code: 'zone-shared', line: row.line, value: name, zones: others.length + 1 });
    return;
  }
  if (zone === undefined) {
    faults.push({ code: 'zone-unknown', line: row.line, value: name });
    return;
  }
  const before = lines.get(zone.id);
  if (before === undefined) readFigures(row, zone, into);
  else faults.push({ code: 'zone-twice', line: row.line, value: name, before });
}

function readFigures({ line, cells }: TableRow, zone: PlanZone, into: MinutesImport): void {
  const { plan, season, decimal, weeks, changes, faults, lines } = into;
  lines.set(zone.id, line);
  const computed = season?.zones.find((each) => each.zone.id === zone.id);
  for (const { index, week, day } of weeks) {
    const value = cells[index] ?? '';
    const to = numberIn(value, decimal);
    // What goes out is what the season has run, even more than can be set by hand: taken in again unchanged, it changes nothing.
    if (to === undefined || isComputed(to, computed, week)) continue;
    if (!(to >= 0 && to <= MINUTES_A_WEEK)) {
      faults.push({ code: 'minutes', line, value, most: MINUTES_A_WEEK });
      continue;
    }
    const from = readWeek(plan.choices?.[zone.id], plan.season, day)?.minutes;
    if (from !== undefined && Math.abs(from - to) < SAME_MINUTES) continue;
    const held = computed && HELD[zoneOrigin(computed, week)];
    if (held === undefined) changes.push({ id: zone.id, reading: 'minutes', zone: zone.name, day, from, to });
    else faults.push({ code: held, line, value, weekStart: dayNumber(day) });
  }
}

/** Weeks in which minutes set by hand would change nothing. */
const HELD: Partial<Record<MinutesOrigin, 'week-closed' | 'week-run'>> = { closed: 'week-closed', run: 'week-run' };

function isComputed(minutes: number, zone: ZoneSeason | undefined, week: number): boolean {
  return zone !== undefined && Math.abs(zoneFigure(zone, 'minutes', week) - minutes) < SAME_MINUTES;
}

function weekColumns(header: readonly string[], { season }: Plan): readonly WeekColumn[] {
  const first = dayNumber(season.firstDay);
  return header.flatMap((heading, index) => {
    if (!isIsoDate(heading)) return [];
    const week = Math.floor((dayNumber(heading) - first) / 7);
    return week >= 0 && week < season.weeks ? [{ index, week, day: isoDate(first + 7 * week) }] : [];
  });
}

function zonesNamed(plan: Plan, name: string): readonly PlanZone[] {
  return plan.zones.filter((zone) => zone.name.trim().toLowerCase() === name.toLowerCase());
}

/** Indexes of the columns that say of what a row is; -1 for one that is not there. */
export function zoneColumns(header: readonly string[], locale: string): Readonly<Record<RowColumn, number>> {
  const words = headingWords(locale);
  const headings = header.map(bareWord);
  const index = (column: RowColumn) => {
    const names = words.map(({ headings: own }) => bareWord(own[column]));
    return headings.findIndex((heading) => names.includes(heading));
  };
  return { zone: index('zone'), planting: index('planting'), measure: index('measure') };
}

type RowColumn = 'zone' | 'planting' | 'measure';

/** Whether a row is of minutes, by its measure; in English in a person's own words too. */
function isMinutes(measure: string, locale: string): boolean {
  const words = headingWords(locale);
  const word = bareWord(measure);
  if (words.some(({ measures }) => bareWord(measures.minutes) === word)) return true;
  return (
    !words.some(({ measures }) => [measures.volume, measures.rain].map(bareWord).includes(word)) && /min/i.test(measure)
  );
}
