/** Invented days from which the tests write files in the layouts of weather offices: no office's figures. */
import { type DayNumber, dayNumber } from '../../../../src/engine/calendar.ts';

export interface MadeDay {
  readonly day: DayNumber;
  /** Tenths, as a gauge is read. */
  readonly rainMm: number;
  readonly minTemperatureC: number;
  readonly maxTemperatureC: number;
}

/** 75 days from May 1, 2027. */
export const FIRST_DAY = dayNumber('2027-05-01');

export const MADE_DAYS: readonly MadeDay[] = Array.from({ length: 75 }, (_, index) => ({
  day: FIRST_DAY + index,
  rainMm: index % 6 === 0 ? Math.round((index + 3) * 2.54) / 10 : 0,
  minTemperatureC: Math.round((8 + index / 10) * 10) / 10,
  maxTemperatureC: Math.round((20 + index / 8) * 10) / 10,
}));

/** Days that no file has a row of. */
export const GAP = { first: 20, days: 4 } as const;
/** Whose highest temperature the office rejects. */
export const FLAGGED = 33;
/** Whose rain was too little to measure. */
export const TRACED = 41;

export const isInGap = (index: number): boolean => index >= GAP.first && index < GAP.first + GAP.days;

/** The days that are in the file, with their place. */
export const WRITTEN = MADE_DAYS.map((day, index) => ({ ...day, index })).filter(({ index }) => !isInGap(index));
