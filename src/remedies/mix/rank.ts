/** The one rule by which remedies are ranked, and by which one is worth showing at all. */
import type { MixFigures } from './mix-figures.ts';
import { type MixRemedy, thingsToGet } from './remedy.ts';

/** A litre that plants go without counts as so many litres of water: it would have to be brought, and then be of use. */
export const UNMET_WEIGHT = 2;

/** A remedy is worth at least this share of the zone's water, and two within it come to much the same. */
export const LEAST_SHARE = 0.01;

/** Less is not worth a walk to the bed: about a gallon. */
const LEAST_LITRES = 4;

/** What a change puts right, litres: the water it saves, and `UNMET_WEIGHT` times what plants no longer go without. */
export function remedyWorth(before: MixFigures, after: MixFigures): number {
  return before.litres - after.litres + UNMET_WEIGHT * (before.unmetLitres - after.unmetLitres);
}

/** The least worth that counts beside what the zone takes as it is. */
export function leastWorth({ litres }: MixFigures): number {
  return Math.max(LEAST_LITRES, LEAST_SHARE * litres);
}

/**
 * Whether it beats leaving the zone as it is: worth enough, with no more days short than before, and with water or days
 * short saved.
 */
export function isWorthwhile(before: MixFigures, after: MixFigures): boolean {
  return (
    remedyWorth(before, after) >= leastWorth(before) &&
    after.shortDays <= before.shortDays &&
    (after.litres < before.litres || after.shortDays < before.shortDays)
  );
}

/** Worth first; where that is much the same, fewer things to get; then the exact worth. The order of equals stays. */
export function ranked(remedies: readonly MixRemedy[], before: MixFigures): readonly MixRemedy[] {
  const step = leastWorth(before);
  const grade = ({ worthLitres }: MixRemedy) => Math.round(worthLitres / step);
  return remedies.toSorted(
    (one, other) =>
      grade(other) - grade(one) ||
      thingsToGet(one.goods) - thingsToGet(other.goods) ||
      other.worthLitres - one.worthLitres,
  );
}
