/** The lines that lie on a planting in one week: one, or two where it was re-laid. */
import { applicationRateMmPerHour } from '../../../engine/application/application-rate.ts';
import { netMmPerMinute } from '../../../engine/application/run-time.ts';
import type { GardenLine } from '../../../engine/garden.ts';
import { lineOn } from '../../../engine/season/planting-days.ts';
import { placesIn } from '../day-span.ts';
import type { PlantingCell } from './planting-cell.ts';

export interface LinePiece {
  readonly line: GardenLine;
  /** Its days in the ground in this week. */
  readonly places: readonly number[];
  /** mm/h. */
  readonly grossRate: number;
  /** mm/h. */
  readonly netRate: number;
  /** Added to labels where the week has more than one line, with its place among the planting's: `, line 2`. */
  readonly suffix: string;
  /** The same for ids. */
  readonly idSuffix: string;
}

export function linePieces({ planting, zone, ground, season }: PlantingCell): readonly LinePiece[] {
  const { firstDay } = season.garden.span;
  const byLine = planting.lines
    .map((line, number) => ({
      line,
      number: number + 1,
      places: placesIn(ground, (place) => lineOn(planting, firstDay + place) === line),
    }))
    .filter(({ places }) => places.length > 0);
  const isOne = byLine.length === 1;
  return byLine.map(({ line, number, places }) => {
    const grossRate = applicationRateMmPerHour(line.flowLph, planting.areaM2);
    return {
      line,
      places,
      grossRate,
      netRate: 60 * netMmPerMinute(grossRate, zone.efficiency),
      suffix: isOne ? '' : `, line ${number}`,
      idSuffix: isOne ? '' : `:line-${number}`,
    };
  });
}
