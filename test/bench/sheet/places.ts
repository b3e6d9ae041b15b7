/** Where things lie in the formula sheet: parameters in the first columns, then a column a week. */

export type Cell = string | number | null;
export type Row = readonly Cell[];

export const PARAMETER_COLUMNS = 8;

/** Rows of the sheet Weather, from 1. */
export const WEATHER_ROW = { eto: 1, normalRain: 2, readRain: 3 } as const;

/** Rows from a zone's first. */
export const ZONE_ROW = { handMinutes: 0, minutes: 1, litres: 2, rainCredit: 3 } as const;
export const ROWS_PER_ZONE = 4;

/** Rows from a planting's first. */
export const PLANTING_ROW = { kc: 0, etc: 1, rain: 2, wanted: 3, irrigation: 4, depletion: 5, litres: 6 } as const;
export const ROWS_PER_PLANTING = 7;

export function columnOf(week: number): string {
  return columnName(PARAMETER_COLUMNS + week);
}

/** 0 = A, 26 = AA. */
export function columnName(place: number): string {
  const letter = String.fromCharCode(65 + (place % 26));
  return place < 26 ? letter : columnName(Math.floor(place / 26) - 1) + letter;
}

/** A row of parameters and one cell a week. */
export function rowOf(parameters: readonly Cell[], weeks: number, cell: (week: number) => Cell): Row {
  return Array.from({ length: PARAMETER_COLUMNS + weeks }, (_, place) =>
    place < PARAMETER_COLUMNS ? (parameters[place] ?? null) : cell(place - PARAMETER_COLUMNS),
  );
}
