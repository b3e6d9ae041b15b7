import { expect } from 'vitest';
import type { RecordReading } from '../../../../src/engine/record/daily-record.ts';
import { recordGaps } from '../../../../src/engine/record/record-gaps.ts';
import type { WeatherFile } from '../../../../src/exchange/weather-file/weather-file.ts';
import { FIRST_DAY, FLAGGED, GAP, isInGap, MADE_DAYS, TRACED } from './made-days.ts';

/** Decimals to which each reading is compared: a file in °F or inches rounds. */
export interface Near {
  readonly rainMm: number;
  readonly temperatureC: number;
}

/** That the made days were read: the gap and the flagged day missing, the trace as 0, every other figure as it was. */
export function expectMade({ record, leftOut, refused, asked, faults }: WeatherFile, near: Near): void {
  expect({ refused, asked, faults }).toEqual({ refused: undefined, asked: [], faults: [] });
  expect(record).toMatchObject({ firstDay: FIRST_DAY, dayCount: MADE_DAYS.length });
  if (record === undefined) return;
  for (const [index, made] of MADE_DAYS.entries()) {
    const rain = index === TRACED ? 0 : made.rainMm;
    expectNear(record.columns.rainMm?.[index], isInGap(index) ? Number.NaN : rain, near.rainMm);
    expectNear(
      record.columns.minTemperatureC?.[index],
      isInGap(index) ? Number.NaN : made.minTemperatureC,
      near.temperatureC,
    );
    const isMissing = isInGap(index) || index === FLAGGED;
    expectNear(
      record.columns.maxTemperatureC?.[index],
      isMissing ? Number.NaN : made.maxTemperatureC,
      near.temperatureC,
    );
  }
  expect(recordGaps(record, 'rainMm')).toEqual([{ firstDay: FIRST_DAY + GAP.first, days: GAP.days }]);
  expect(countOf('trace', 'rainMm', leftOut)).toBe(1);
}

export function countOf(cause: string, reading: RecordReading, leftOut: WeatherFile['leftOut']): number {
  return leftOut.find((each) => each.cause === cause && each.reading === reading)?.count ?? 0;
}

function expectNear(found: number | undefined, wanted: number, tolerance: number): void {
  if (Number.isNaN(wanted)) expect(found).toBeNaN();
  else expect(Math.abs((found ?? Number.NaN) - wanted)).toBeLessThanOrEqual(tolerance);
}
