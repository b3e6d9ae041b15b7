import type { Season } from '../../../engine/season/season.ts';
import type { SeasonBuffers } from '../../../engine/season/zone-season.ts';

/** By the planting's id: of each month of the season, the share of its normal rain that counts, 0 to 1. */
export type RainShares = NonNullable<SeasonBuffers['rainShares']>;

/** What of a season takes long to work out and can be handed to a worker. */
export function rainSharesOf({ zones }: Season): RainShares {
  return new Map(
    zones.flatMap(({ plantings }) => plantings.map(({ planting, rainShares }) => [planting.id, rainShares])),
  );
}
