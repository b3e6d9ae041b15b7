/** Parts of a document that may hold anything: each is what is asked for, or nothing. */
import { type DayNumber, dayNumber, isIsoDate } from '../../engine/calendar.ts';

export type Loose = Readonly<Record<string, unknown>>;

export function recordIn(value: unknown): Loose | undefined {
  return typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Loose) : undefined;
}

const NO_FIELDS: Loose = Object.freeze({});

/** Its fields, none where it is no record. */
export function fieldsIn(value: unknown): Loose {
  return recordIn(value) ?? NO_FIELDS;
}

/** Holes, which a list of plain JavaScript can have, are items that are undefined: most of what goes through a list passes holes over. */
export function listIn(value: unknown): readonly unknown[] {
  if (!Array.isArray(value)) return [];
  return value.includes(undefined) ? Array.from(value) : value;
}

export function textIn(value: unknown): string | undefined {
  return typeof value === 'string' ? value : undefined;
}

export function numberIn(value: unknown): number | undefined {
  return typeof value === 'number' ? value : undefined;
}

export function dayIn(value: unknown): DayNumber | undefined {
  return typeof value === 'string' && isIsoDate(value) ? dayNumber(value) : undefined;
}
