/** A rain gauge's log from a CSV file: a day and its rain on each row, in the plan's unit. */
import { isIsoDate } from '../../engine/calendar.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import type { Plan } from '../../plan/schema/plan-schema.ts';
import type { ImportChange, ImportPreview, RowFault } from './imported.ts';
import { numberIn, readTable } from './read-table.ts';

const DATE_HEADINGS = ['date', 'day'];
const RAIN_HEADINGS = ['rain', 'rainfall', 'precipitation', 'prcp', 'precip'];

/** What a day had beside its rain is kept. A blank is a day that was not read and changes nothing. */
export function rainFromCsv(text: string, plan: Plan): ImportPreview {
  const { header, rows } = readTable(text);
  const words = header.map((heading) => heading.toLowerCase().replaceAll(/[^a-z]/g, ''));
  const date = words.findIndex((word) => DATE_HEADINGS.includes(word));
  const rain = words.findIndex((word) => RAIN_HEADINGS.some((heading) => word.startsWith(heading)));
  if (date < 0 || rain < 0) {
    const expected = 'a heading Date and a heading Rain';
    return { edit: undefined, changes: [], faults: [{ line: 1, value: header.join(', ').slice(0, 80), expected }] };
  }
  const changes: ImportChange[] = [];
  const faults: RowFault[] = [];
  for (const { line, cells } of rows) {
    const read = readDay(cells[date] ?? '', cells[rain] ?? '', plan);
    if (read !== undefined && 'expected' in read) faults.push({ line, ...read });
    else if (read !== undefined && read.from !== read.to) changes.push(read);
  }
  const edits = changes.map<Edit>(({ day, to }) => ({
    type: 'set-day-weather',
    day,
    weather: { ...plan.log?.days?.[day], rain: to },
  }));
  const label = 'Rain from a file';
  return { edit: edits.length === 0 ? undefined : { type: 'together', label, edits }, changes, faults };
}

/** A day's rain, why it cannot be read, or nothing where no rain was read that day. */
function readDay(date: string, rain: string, plan: Plan): ImportChange | Omit<RowFault, 'line'> | undefined {
  const day = date.slice(0, 10);
  if (!isIsoDate(day)) return { value: date, expected: 'a day as year-month-day, such as 2027-04-05' };
  const to = numberIn(rain);
  if (to === undefined) return undefined;
  if (!(to >= 0)) return { value: rain, expected: 'rain of 0 or more, with a point as decimal mark' };
  return { day, from: plan.log?.days?.[day]?.rain, to };
}
