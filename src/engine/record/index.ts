/** Years of daily weather of one place: what is known by day, its reference ET, its normals, its gaps. */
export { type DailyRecord, partOf, RECORD_READINGS, type RecordReading, readingsOn } from './daily-record.ts';
export { type RecordEto, recordEto, recordEtoSteps } from './record-eto.ts';
export { bridged, MOST_BRIDGED_DAYS, type RecordGap, recordGaps } from './record-gaps.ts';
export { monthsWithout, type RecordNormals, recordNormals } from './record-normals.ts';
export { fullYears, normalsPart } from './record-span.ts';
