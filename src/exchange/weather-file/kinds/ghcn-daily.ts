/**
 * GHCN-Daily by station, fixed width (`.dly`): id (columns 1 to 11), year (12 to 15), month (16, 17), element (18 to 21), then 31 times a
 * value (5) and its measurement, quality and source flag. Tenths of °C and mm; -9999 is missing, and so are days that a month has not.
 *
 * Source: layout of Menne et al., Global Historical Climatology Network - Daily (readme of NOAA NCEI; from memory).
 */
import { dayNumberOf, daysInMonth } from '../../../engine/calendar.ts';
import { choosePlace } from '../file-places.ts';
import { RecordBuilder } from '../record-builder.ts';
import { unreadFile, type WeatherFile, type WeatherFileChoice, type WeatherFileLayout } from '../weather-file.ts';
import { ACCUMULATED_ELEMENT, GHCN_READINGS, type GhcnElement, isGhcnMissing, putGhcnFigure } from './ghcn-readings.ts';

const LINE = /^([A-Z0-9_-]{11})(\d{4})(0[1-9]|1[0-2])([A-Z0-9]{4})((?:[ \d-]{5}...)+)/;
const LINES_AT_A_STRETCH = 240;

interface MonthLine {
  readonly id: string;
  readonly year: number;
  readonly month: number;
  readonly element: string;
  readonly days: string;
}

export const ghcnDaily: WeatherFileLayout = { kind: 'ghcn-daily', isLike: (start) => LINE.test(start), read };

function* read(text: string, choice: WeatherFileChoice): Generator<void, WeatherFile> {
  const file = unreadFile('ghcn-daily');
  const lines = text.split(/\r\n?|\n/);
  const ids = new Set<string>();
  for (const line of lines) if (line.trim() !== '') ids.add(line.slice(0, 11));
  const places = [...ids].map((id) => ({ ...NOWHERE, id }));
  yield;
  const chosen = choosePlace(places, choice);
  if (chosen.asked.length > 0) return { ...file, ...chosen };
  const builder = new RecordBuilder();
  const faults: WeatherFile['faults'][number][] = [];
  for (const [index, line] of lines.entries()) {
    if (index % LINES_AT_A_STRETCH === 0) yield;
    if (line.trim() === '' || line.slice(0, 11) !== chosen.place?.id) continue;
    const month = monthIn(line);
    if (month !== undefined) putMonth(month, builder);
    else
      faults.push({ code: 'date', line: index + 1, value: line.slice(0, 21), example: `${chosen.place.id}202704PRCP` });
  }
  const system = { system: 'metric', by: 'layout' } as const;
  return { ...file, ...chosen, faults, units: { depth: system, temperature: system }, ...(yield* builder.finish()) };
}

const NOWHERE = {
  name: undefined,
  latitudeDeg: undefined,
  longitudeDeg: undefined,
  elevationM: undefined,
  timeZone: undefined,
} as const;

/** Trailing blanks may have been cut from a line. */
function monthIn(line: string): MonthLine | undefined {
  const parts = LINE.exec(line.replace(/\r$/, '').padEnd(269));
  if (parts === null) return undefined;
  const [, id = '', year, month, element = '', days = ''] = parts;
  return { id, year: Number(year), month: Number(month) - 1, element, days };
}

function putMonth({ year, month, element, days }: MonthLine, builder: RecordBuilder): void {
  const first = dayNumberOf({ year, month, dayOfMonth: 1 });
  if (element !== ACCUMULATED_ELEMENT && !(element in GHCN_READINGS)) return;
  for (let date = 0; date < daysInMonth(year, month); date += 1) {
    const at = 8 * date;
    const text = days.slice(at, at + 5).trim();
    if (isGhcnMissing(text)) continue;
    const day = first + date;
    const flags = { measurement: days.charAt(at + 5).trim(), quality: days.charAt(at + 6).trim() };
    if (element === ACCUMULATED_ELEMENT) builder.leaveOut('accumulated', day, 'rainMm', text);
    else putGhcnFigure(builder, { day, element: element as GhcnElement, value: tenths(text), text, flags });
  }
}

/** Whole numbers only. */
export function tenths(text: string): number {
  return /^-?\d+$/.test(text) ? Number(text) / 10 : Number.NaN;
}
