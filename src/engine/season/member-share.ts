/** What a planting has at the start of a week in which its lines may wet another share of its ground than before. */
import { wetDays } from './planting-days.ts';
import { shareIn, wetAnew } from './wetted-week.ts';
import type { ZoneMember } from './zone-member.ts';

export function startShare({ season: { planting }, days, stores }: ZoneMember, week: number): void {
  if (planting.wettedShareByWeek === undefined) return;
  wetDays(days, planting, week);
  if (days.demand.first < 7 * week) wetAnew(stores, shareIn(planting, week - 1), shareIn(planting, week));
}
