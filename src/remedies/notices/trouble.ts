/** How much plantings lack, or lose past their roots, over a season. Litres. */
import type { PlantingSeason, Season } from '../../engine/season/season.ts';
import { weeksWhere } from '../../explain/notices/runs.ts';
import { shortageIn } from '../../explain/notices/shortage.ts';
import { wastedMm } from '../../explain/notices/waste.ts';

export type LitresOf = (own: PlantingSeason) => number;

/** Demand unmet, and water missing to the goal at the ends of short weeks. */
export const lackingLitres: LitresOf = (own) => {
  const { unmetLitres, missingLitres } = shortageIn(
    own,
    weeksWhere(own.weeks, () => true),
  );
  return unmetLitres + missingLitres;
};

/** Demand unmet alone: of a planting that gets what it asks for. */
export const unmetLitres: LitresOf = (own) =>
  shortageIn(
    own,
    weeksWhere(own.weeks, () => true),
  ).unmetLitres;

/** Irrigation that drained for nothing. */
export const wastedLitres: LitresOf = (own) => {
  let mm = 0;
  for (let week = 0; week < own.weeks; week++) mm += wastedMm(own, week);
  return own.planting.areaM2 * mm;
};

/** Over the plantings for which it is asked, wherever they stand. */
export function sumOver(season: Season, litresOf: LitresOf, isAsked: (plantingId: string) => boolean): number {
  let sum = 0;
  for (const { plantings } of season.zones) {
    for (const own of plantings) if (isAsked(own.planting.id)) sum += litresOf(own);
  }
  return sum;
}
