import type { Cumulative } from '../../engine/season/cumulative.ts';
import { fromSi, type UnitSystem } from '../../engine/units.ts';

/** A point of the chart: `x` in weeks since the season began, `y` in the plan's unit of volume. */
export interface ChartPoint {
  readonly x: number;
  readonly y: number;
}

/**
 * The upper edges that are drawn, from the bound before the first week to the bound after the last. The three supplies
 * stand on each other; demand lies above `met` by what went unmet. On the line of demand lies the rest of what the meter
 * shows, which the roots did not keep, so that the top is rain, soil and meter together.
 */
export interface ChartLines {
  readonly weeks: number;
  readonly rain: readonly ChartPoint[];
  readonly irrigation: readonly ChartPoint[];
  readonly fromSoil: readonly ChartPoint[];
  readonly met: readonly ChartPoint[];
  readonly demand: readonly ChartPoint[];
  readonly notKept: readonly ChartPoint[];
  /** What the meter shows, from nothing: what an allowance is held against. */
  readonly meter: readonly ChartPoint[];
}

export function chartLines(totals: Cumulative, units: UnitSystem): ChartLines {
  const line = (litresAt: (week: number) => number): readonly ChartPoint[] => [
    { x: 0, y: 0 },
    ...Array.from({ length: totals.weeks }, (_, week) => ({ x: week + 1, y: fromSi(litresAt(week), 'volume', units) })),
  ];
  const at = (sums: Float64Array, week: number) => sums[week] ?? 0;
  const watered = (week: number) => at(totals.rain, week) + at(totals.irrigation, week);
  return {
    weeks: totals.weeks,
    rain: line((week) => at(totals.rain, week)),
    irrigation: line(watered),
    fromSoil: line((week) => watered(week) + at(totals.fromSoil, week)),
    met: line((week) => at(totals.demand, week) - at(totals.unmet, week)),
    demand: line((week) => at(totals.demand, week)),
    notKept: line((week) => at(totals.demand, week) + at(totals.irrigationGross, week) - at(totals.irrigation, week)),
    meter: line((week) => at(totals.irrigationGross, week)),
  };
}
