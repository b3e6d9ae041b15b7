/**
 * The two daily CSV layouts of NOAA NCEI. `search` (Climate Data Online): STATION, NAME, ..., DATE and a column for each element, °F and
 * inches or °C and mm as whoever ordered it chose, which the file does not say. `access` (one station): STATION, DATE, LATITUDE, ..., NAME,
 * whole tenths of °C and mm padded with blanks, a column of attributes after each element. A quality flag rejects its figure.
 */
import { dayNumber } from '../../../engine/calendar.ts';
import { toSi, type UnitSystem } from '../../../engine/units.ts';
import type { RowFault } from '../../csv/imported.ts';
import { type DayRead, readDay } from '../../csv/read-day.ts';
import { type RowStep, rowSteps } from '../../csv/row-steps.ts';
import { isStretchEnd } from '../../csv/stretch.ts';
import { dayOrderSteps } from '../../csv/table-form.ts';
import { choosePlace } from '../file-places.ts';
import { RecordBuilder } from '../record-builder.ts';
import {
  type FilePlace,
  type FileUnits,
  unreadFile,
  type WeatherFile,
  type WeatherFileChoice,
  type WeatherFileLayout,
} from '../weather-file.ts';
import { tenths } from './ghcn-daily.ts';
import {
  ACCUMULATED_ELEMENT,
  flagsIn,
  GHCN_ELEMENTS,
  type GhcnElement,
  type GhcnFlags,
  isGhcnMissing,
  putGhcnFigure,
} from './ghcn-readings.ts';
import { unitsBySize } from './units-by-size.ts';

/** A figure as it is written. */
interface Figure {
  readonly day: number;
  readonly element: GhcnElement | typeof ACCUMULATED_ELEMENT;
  readonly text: string;
  readonly flags: GhcnFlags;
}

/** What parts the cells: a comma as the office writes it, a semicolon or a tab where a spreadsheet saved the file. */
const separatorIn = (start: string): string => /^"?\w+"?\s*([;\t])/.exec(start)?.[1] ?? ',';

const headingsIn = (start: string): readonly string[] =>
  (start.split('\n')[0] ?? '').split(separatorIn(start)).map((cell) => cell.trim().replaceAll('"', '').toUpperCase());

const isNcei = (headings: readonly string[]): boolean =>
  headings.includes('STATION') && headings.includes('DATE') && GHCN_ELEMENTS.some((each) => headings.includes(each));

/** The access layout has the day before the place, and attributes beside every element. */
const isAccess = (headings: readonly string[]): boolean =>
  isNcei(headings) &&
  headings.indexOf('DATE') === headings.indexOf('STATION') + 1 &&
  GHCN_ELEMENTS.every((each) => !headings.includes(each) || headings.includes(`${each}_ATTRIBUTES`));

export const nceiAccess: WeatherFileLayout = {
  kind: 'ncei-access',
  isLike: (start) => isAccess(headingsIn(start)),
  read: (text, choice) => read('ncei-access', text, choice),
};

export const nceiSearch: WeatherFileLayout = {
  kind: 'ncei-search',
  isLike: (start) => isNcei(headingsIn(start)),
  read: (text, choice) => read('ncei-search', text, choice),
};

type NceiKind = 'ncei-access' | 'ncei-search';

/** The file's rows by the names of its columns. */
interface NceiTable {
  readonly rows: readonly RowStep[];
  readonly cell: (row: RowStep, name: string) => string;
}

function* read(kind: NceiKind, text: string, choice: WeatherFileChoice): Generator<void, WeatherFile> {
  const file = unreadFile(kind);
  const table = yield* tableIn(text);
  const chosen = choosePlace(yield* placesIn(table), choice);
  if (chosen.asked.length > 0) return { ...file, ...chosen };
  const { cell } = table;
  // A spreadsheet that saves such a file writes its days as its own country does.
  const order = choice.days ?? (yield* dayOrderSteps(datesIn(table))).answer;
  if (order === undefined) return { ...file, ...chosen, asked: ['days'] };
  const builder = new RecordBuilder();
  const faults: RowFault[] = [];
  const figures: Figure[] = [];
  for (const [index, row] of table.rows.entries()) {
    if (isStretchEnd(index)) yield;
    if (cell(row, 'STATION') !== chosen.place?.id) continue;
    const written = readDay(cell(row, 'DATE'), order);
    if (isTimed(written)) return { ...file, ...chosen, refused: { code: 'hourly' } };
    if (written === undefined) {
      faults.push({ code: 'date', line: row.line, value: cell(row, 'DATE'), example: '2027-04-05' });
      continue;
    }
    const day = dayNumber(written.day);
    builder.meet(day);
    figures.push(...figuresIn(row, day, table));
  }
  const units = yield* unitsOf(kind, figures, choice);
  if (units === undefined) return { ...file, ...chosen, faults, asked: ['units'] };
  yield* putFigures(figures, kind === 'ncei-access' ? tenths : searchValue(units.system), builder);
  return { ...file, ...chosen, faults, units: { depth: units, temperature: units }, ...(yield* builder.finish()) };
}

function* tableIn(text: string): Generator<void, NceiTable> {
  const rows: RowStep[] = [];
  for (const step of rowSteps(text, separatorIn(text))) {
    rows.push(...step);
    yield;
  }
  const header = (rows.shift()?.cells ?? []).map((cell) => cell.toUpperCase());
  const columns = new Map(header.map((name, index) => [name, index]));
  return { rows, cell: ({ cells }, name) => cells[columns.get(name) ?? -1] ?? '' };
}

function* placesIn({ rows, cell }: NceiTable): Generator<void, readonly FilePlace[]> {
  const places = new Map<string, FilePlace>();
  for (const [index, row] of rows.entries()) {
    if (isStretchEnd(index)) yield;
    const id = cell(row, 'STATION');
    if (!places.has(id))
      places.set(
        id,
        placeIn(id, (name) => cell(row, name)),
      );
  }
  return [...places.values()];
}

function* datesIn({ rows, cell }: NceiTable): Generator<string> {
  for (const row of rows) yield cell(row, 'DATE');
}

/** Hours of a day stand in another file of the same look. */
function isTimed(written: DayRead | undefined): boolean {
  const time = written?.time ?? '';
  return time !== '' && !/^0?0(:00)*$/.test(time);
}

function figuresIn(row: RowStep, day: number, { cell }: NceiTable): readonly Figure[] {
  return ([...GHCN_ELEMENTS, ACCUMULATED_ELEMENT] as const).flatMap((element) => {
    const text = cell(row, element).replace(',', '.');
    return isGhcnMissing(text) ? [] : [{ day, element, text, flags: flagsIn(cell(row, `${element}_ATTRIBUTES`)) }];
  });
}

function* putFigures(
  figures: readonly Figure[],
  amountOf: (text: string, element: GhcnElement) => number,
  builder: RecordBuilder,
): Generator<void> {
  for (const [index, { day, element, text, flags }] of figures.entries()) {
    if (isStretchEnd(index)) yield;
    if (element === ACCUMULATED_ELEMENT) builder.leaveOut('accumulated', day, 'rainMm', text);
    else putGhcnFigure(builder, { day, element, value: amountOf(text, element), text, flags });
  }
}

function placeIn(id: string, cell: (name: string) => string): FilePlace {
  const number = (name: string) => (cell(name) === '' ? undefined : Number(cell(name)));
  const known = (value: number | undefined) => (Number.isFinite(value) && value !== -999.9 ? value : undefined);
  return {
    id,
    name: cell('NAME') || undefined,
    latitudeDeg: known(number('LATITUDE')),
    longitudeDeg: known(number('LONGITUDE')),
    elevationM: known(number('ELEVATION')),
    timeZone: undefined,
  };
}

const searchValue =
  (system: UnitSystem) =>
  (text: string, element: GhcnElement): number =>
    /^-?(\d+\.?\d*|\.\d+)$/.test(text)
      ? toSi(Number(text), element === 'PRCP' ? 'depth' : 'temperature', system)
      : Number.NaN;

/** Undefined where both are possible and nobody has said which. */
function* unitsOf(
  kind: NceiKind,
  figures: readonly Figure[],
  { units }: WeatherFileChoice,
): Generator<void, FileUnits | undefined> {
  if (kind === 'ncei-access') return { system: 'metric', by: 'layout' };
  if (units !== undefined) return { system: units, by: 'choice' };
  const system = yield* unitsBySize(figures);
  return system && { system, by: 'size' };
}
