import type { GardenLine, GardenPlanting } from '../garden.ts';

export type AtPressure<Result> = (line: GardenLine, planting: GardenPlanting, inletPressureKpa: number) => Result;

/** As many as a plan has sources. */
const MOST_PRESSURES = 100;

/**
 * The same calculation, done once for a planting's line at a pressure while both objects live: an unchanged planting is
 * the same object, and a profile costs far more than finding it again.
 */
export function remembered<Result>(compute: AtPressure<Result>): AtPressure<Result> {
  const known = new WeakMap<GardenPlanting, WeakMap<GardenLine, Map<number, Result>>>();
  return (line, planting, inletPressureKpa) => {
    const lines = known.get(planting) ?? new WeakMap<GardenLine, Map<number, Result>>();
    known.set(planting, lines);
    const results = lines.get(line) ?? new Map<number, Result>();
    lines.set(line, results);
    const before = results.get(inletPressureKpa);
    if (before !== undefined || results.has(inletPressureKpa)) return before as Result;
    const result = compute(line, planting, inletPressureKpa);
    if (results.size >= MOST_PRESSURES) results.clear();
    results.set(inletPressureKpa, result);
    return result;
  };
}
