/** An allowance that goes by planted ground, as volume of the season. */
import type { DayNumber } from '../../engine/calendar.ts';
import type { GardenSupply, GardenZone } from '../../engine/garden.ts';
import { memoize } from './memoize.ts';

interface Planted {
  readonly zones: readonly GardenZone[];
  /** Of the season. */
  readonly first: DayNumber;
  readonly last: DayNumber;
}

/**
 * The supply with the season's allowance that follows from so much water on each square metre: of the most ground that is planted at the
 * same time, so that a bed with two crops in a row counts once. Where the season has an allowance of its own, the lesser counts.
 */
export function withAreaAllowance(
  supply: GardenSupply,
  litresPerM2: number | undefined,
  { zones, first, last }: Planted,
): GardenSupply {
  return litresPerM2 === undefined
    ? supply
    : withAllowance(supply, { litres: litresPerM2 * mostGroundM2(zones, first, last) });
}

const withAllowance = memoize(
  (supply: GardenSupply, { litres }: { readonly litres: number }): GardenSupply => ({
    ...supply,
    allowanceLitresPerSeason: Math.min(supply.allowanceLitresPerSeason ?? litres, litres),
  }),
);

function mostGroundM2(zones: readonly GardenZone[], first: DayNumber, last: DayNumber): number {
  const changes = zones
    .flatMap(({ plantings }) => plantings)
    .map(({ from, to, areaM2 }) => ({ from: Math.max(from, first), end: Math.min(to, last) + 1, areaM2 }))
    .filter(({ from, end }) => from < end)
    .flatMap(({ from, end, areaM2 }) => [
      { day: from, areaM2 },
      { day: end, areaM2: -areaM2 },
    ])
    // Of one day what is pulled goes first.
    .sort((left, right) => left.day - right.day || left.areaM2 - right.areaM2);
  let groundM2 = 0;
  let mostM2 = 0;
  for (const { areaM2 } of changes) {
    groundM2 += areaM2;
    mostM2 = Math.max(mostM2, groundM2);
  }
  return mostM2;
}
