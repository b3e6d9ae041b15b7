/** Where the readings of a day come from. What nothing is said of was typed. */
import type { PlanDay } from './schema/plan-schema.ts';
import { type READING_SOURCES, SOURCED_READINGS } from './schema/records.ts';

export type SourcedReading = (typeof SOURCED_READINGS)[number];

export type ReadingSource = (typeof READING_SOURCES)[number];

/** Undefined where it was typed, or is not there. */
export function readingSource(day: PlanDay, reading: SourcedReading): ReadingSource | undefined {
  const { source } = day;
  if (day[reading] === undefined) return undefined;
  return typeof source === 'object' ? source[reading] : source;
}

/** The day with its readings told from where they come, in few letters; `undefined` for one that was typed. */
export function withSources(day: PlanDay, sourceOf: (reading: SourcedReading) => ReadingSource | undefined): PlanDay {
  const { source: _, ...readings } = day;
  const known = SOURCED_READINGS.filter((reading) => day[reading] !== undefined);
  const told = known.flatMap((reading): (readonly [SourcedReading, ReadingSource])[] => {
    const source = sourceOf(reading);
    return source === undefined ? [] : [[reading, source]];
  });
  const [first] = told;
  if (first === undefined) return readings;
  const isOne = told.length === known.length && told.every(([, source]) => source === first[1]);
  return { ...readings, source: isOne ? first[1] : Object.fromEntries(told) };
}
