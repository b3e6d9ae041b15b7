/** Minutes set by hand from a CSV table: a row for each zone, a column for each week, as `seasonToCsv` writes it. */
import { dayNumber, isIsoDate, isoDate } from '../../engine/calendar.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import type { Plan, PlanZone } from '../../plan/schema/plan-schema.ts';
import type { ImportChange, ImportPreview, RowFault } from './imported.ts';
import { numberIn, readTable } from './read-table.ts';

const MOST_MINUTES = 7 * 24 * 60;

interface WeekColumn {
  readonly place: number;
  /** First day of the week of the season that the heading's day lies in. */
  readonly week: string;
}

/**
 * Reads the rows whose measure is minutes (or that name none) against the plan. A blank changes nothing. A figure that is
 * the same as what is set by hand already is no change. Zones are found by name, whatever its case.
 */
export function minutesFromCsv(text: string, plan: Plan): ImportPreview {
  const { header, rows } = readTable(text);
  const places = { zone: find(header, 'zone'), planting: find(header, 'planting'), measure: find(header, 'measure') };
  const weeks = weekColumns(header, plan);
  if (places.zone < 0 || weeks.length === 0) {
    const expected = 'a heading Zone, and headings with the first day of weeks of the season, such as 2027-04-05';
    return { edit: undefined, changes: [], faults: [{ line: 1, value: header.join(', ').slice(0, 80), expected }] };
  }
  const changes: (ImportChange & { readonly id: string })[] = [];
  const faults: RowFault[] = [];
  for (const { line, cells } of rows) {
    if (cells[places.planting]) continue;
    if (places.measure >= 0 && !/min/i.test(cells[places.measure] ?? '')) continue;
    const name = cells[places.zone] ?? '';
    const zone = zoneNamed(plan, name);
    if (zone === undefined) faults.push({ line, value: name, expected: 'the name of a zone of the plan' });
    else readZoneRow({ line, cells, zone, plan }, weeks, { changes, faults });
  }
  const edits = changes.map<Edit>(({ id, day, to }) => ({ type: 'set-minutes', zone: id, week: day, minutes: to }));
  const label = 'Minutes from a file';
  return { edit: edits.length === 0 ? undefined : { type: 'together', label, edits }, changes, faults };
}

function readZoneRow(
  row: { readonly line: number; readonly cells: readonly string[]; readonly zone: PlanZone; readonly plan: Plan },
  weeks: readonly WeekColumn[],
  into: { readonly changes: (ImportChange & { readonly id: string })[]; readonly faults: RowFault[] },
): void {
  const { line, cells, zone, plan } = row;
  for (const { place, week } of weeks) {
    const to = numberIn(cells[place] ?? '');
    if (to === undefined) continue;
    if (!(to >= 0 && to <= MOST_MINUTES)) {
      into.faults.push({ line, value: cells[place] ?? '', expected: `minutes of a week, from 0 to ${MOST_MINUTES}` });
      continue;
    }
    const from = plan.choices?.[zone.id]?.[week]?.minutes;
    if (from !== to) into.changes.push({ id: zone.id, zone: zone.name, day: week, from, to });
  }
}

function weekColumns(header: readonly string[], { season }: Plan): readonly WeekColumn[] {
  const first = dayNumber(season.firstDay);
  return header.flatMap((heading, place) => {
    if (!isIsoDate(heading)) return [];
    const week = Math.floor((dayNumber(heading) - first) / 7);
    return week >= 0 && week < season.weeks ? [{ place, week: isoDate(first + 7 * week) }] : [];
  });
}

function zoneNamed(plan: Plan, name: string): PlanZone | undefined {
  return plan.zones.find((zone) => zone.name.trim().toLowerCase() === name.toLowerCase());
}

function find(header: readonly string[], word: string): number {
  return header.findIndex((heading) => heading.toLowerCase() === word);
}
