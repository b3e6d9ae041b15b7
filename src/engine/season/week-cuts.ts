/** In which weeks of a season water is cut. */
import type { Garden, SupplyCut } from '../garden.ts';

/** The cuts of a season, by week: of two that name one the later in the list. A cut names the weeks that begin on its days. */
export function weekCuts({ span, supply }: Pick<Garden, 'span' | 'supply'>): ReadonlyMap<number, SupplyCut> {
  const cuts = new Map<number, SupplyCut>();
  for (const cut of supply.cuts ?? []) {
    for (let week = 0; week < span.weeks; week++) {
      const day = span.firstDay + 7 * week;
      if (day >= cut.from && day <= cut.to) cuts.set(week, cut);
    }
  }
  return cuts;
}
