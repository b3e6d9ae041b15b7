/** The season's weather by day: what was observed, else what the normals say. */
import type { DayNumber } from './calendar.ts';

export interface Weather {
  readonly firstDay: DayNumber;
  readonly days: number;
  readonly eto: DailyEto;
  readonly rain: DailyRain;
}

/** Reference evapotranspiration of each day. */
export interface DailyEto {
  readonly mm: Float64Array;
  /** Index into ETO_METHODS for each day. */
  readonly method: Uint8Array;
}

/** Rain of each day, and where its figure comes from. */
export interface DailyRain {
  readonly mm: Float64Array;
  /** Index into RAIN_ORIGINS for each day. */
  readonly origin: Uint8Array;
}

export const ETO_METHODS = ['observed', 'penman-monteith', 'hargreaves-samani', 'normals'] as const;
export const RAIN_ORIGINS = ['normals', 'observed-day', 'observed-week'] as const;
