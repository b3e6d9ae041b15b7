/** Elements of the Global Historical Climatology Network that are read, their scale, and what its flags mean. */
import type { RecordReading } from '../../../engine/record/daily-record.ts';
import type { RecordBuilder } from '../record-builder.ts';

/** In tenths of °C and of mm in the layouts that say so; no other element is read. */
export const GHCN_READINGS = {
  PRCP: 'rainMm',
  TMAX: 'maxTemperatureC',
  TMIN: 'minTemperatureC',
} as const satisfies Readonly<Record<string, RecordReading>>;

export type GhcnElement = keyof typeof GHCN_READINGS;

export const GHCN_ELEMENTS = Object.keys(GHCN_READINGS) as readonly GhcnElement[];

/** A multi-day total of rain, and the number of days that it was summed over: the days before it have none of their own (from memory). */
export const ACCUMULATED_ELEMENT = 'MDPR';

/** Written where nothing is known; 9999 and 99999 in older exports (from memory). */
const MISSING: ReadonlySet<string> = new Set(['', '-9999', '9999', '99999', 'M']);

export function isGhcnMissing(text: string): boolean {
  return MISSING.has(text) || /^-9999(\.0*)?$/.test(text);
}

export interface GhcnFlags {
  /** T: a trace of rain. */
  readonly measurement: string;
  /** Anything in it: the figure failed a check. */
  readonly quality: string;
}

/** What stands in a column of attributes: measurement, quality and source flag with commas between (the NCEI layouts). */
export function flagsIn(attributes: string): GhcnFlags {
  const [measurement = '', quality = ''] = attributes.split(',').map((flag) => flag.trim());
  return { measurement, quality };
}

/** A figure of one day with its flags. `value`: in the engine's unit. */
export interface GhcnFigure {
  readonly day: number;
  readonly element: GhcnElement;
  readonly value: number;
  readonly text: string;
  readonly flags: GhcnFlags;
}

export function putGhcnFigure(builder: RecordBuilder, { day, element, value, text, flags }: GhcnFigure): void {
  const reading = GHCN_READINGS[element];
  builder.column(reading);
  if (flags.quality !== '') builder.leaveOut('flagged', day, reading, text);
  else if (element === 'PRCP' && (flags.measurement === 'T' || text === 'T')) builder.putTrace(day, text);
  else builder.put(day, reading, value, text);
}
