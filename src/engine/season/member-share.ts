/** What a planting has at the start of a week in which its lines may wet another share of its ground than before. */
import { daysOfWeek } from './planting-days.ts';
import type { WeekOutlook } from './week-outlook.ts';
import { shareIn, wetAnew } from './wetted-week.ts';
import type { ZoneMember } from './zone-member.ts';

export function startShare(member: ZoneMember, scratch: WeekOutlook, week: number): void {
  const { planting, demand } = member.season;
  if (planting.wettedShareByWeek === undefined) return;
  const [before, now] = [shareIn(planting, week - 1), shareIn(planting, week)];
  if (now === before && now === member.days.demand.share) return;
  member.days = daysOfWeek(member.days, planting, week);
  member.outlook.days = member.days.asked;
  scratch.days = member.days.asked;
  if (demand.first < 7 * week) wetAnew(member.stores, before, now);
}
