import type { DayNumber } from '../calendar.ts';
import type { GardenSupply, SupplySource } from '../garden.ts';
import { NOMINAL_PRESSURE_KPA } from '../line/usual-pressures.data.ts';

/** The source that serves on a day: the last that has begun by then; undefined where none has. */
export function sourceOn({ sources }: Pick<GardenSupply, 'sources'>, day: DayNumber): SupplySource | undefined {
  return sources.findLast(({ from }) => from <= day);
}

export interface InletPressure {
  readonly kpa: number;
  /** False where the source tells none and the usual regulated pressure is taken. */
  readonly isKnown: boolean;
}

/** Pressure at the inlet of a line on a day: the source's own, since what is lost on the way to the line is not known. */
export function inletPressureOn(supply: Pick<GardenSupply, 'sources'>, day: DayNumber): InletPressure {
  const kpa = sourceOn(supply, day)?.pressureKpa;
  return kpa === undefined ? { kpa: NOMINAL_PRESSURE_KPA, isKnown: false } : { kpa, isKnown: true };
}
