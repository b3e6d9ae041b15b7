/** What the meter shows in eight years of ten and in the middle one, week by week, as it is drawn. */

import { fromSi, type UnitSystem } from '../../engine/units.ts';
import type { YearBand } from '../../engine/years/year-band.ts';
import type { ChartPoint } from './chart-lines.ts';

export interface BandLines {
  readonly least: readonly ChartPoint[];
  readonly middle: readonly ChartPoint[];
  readonly most: readonly ChartPoint[];
}

export function bandLines(band: YearBand, units: UnitSystem): BandLines {
  return {
    least: lineOf(band.leastLitres, units),
    middle: lineOf(band.middle.irrigationLitres, units),
    most: lineOf(band.mostLitres, units),
  };
}

function lineOf(irrigationLitres: Float64Array, units: UnitSystem): readonly ChartPoint[] {
  const points = Array.from(irrigationLitres, (litres, week) => ({ x: week + 1, y: fromSi(litres, 'volume', units) }));
  return [{ x: 0, y: 0 }, ...points];
}
