/** Days a week that fit, month by month, where a zone is watered less often. */
import { zoneDaysAWeek } from '../../engine/application/days-a-week.ts';
import { type DaysByMonth, monthKey } from '../../plan/watering-days-in.ts';
import type { MonthDays, NoticeInPlan, RemedyCandidate } from './remedy.ts';
import { zoneIn } from './weekdays.ts';

/** None where the zone's own days do in every month. */
export function daysByMonth(
  { plan, season }: Pick<NoticeInPlan, 'plan' | 'season'>,
  zoneId: string,
): readonly RemedyCandidate[] {
  const zone = zoneIn(plan, zoneId);
  if (zone === undefined) return [];
  const own = season.zones.find((each) => each.zone.id === zoneId);
  const months = (own === undefined ? [] : zoneDaysAWeek(season, own))
    .filter((fit) => !fit.isEnough)
    .map(({ month, daysAWeek: days }): MonthDays => ({ month, days }));
  if (months.length === 0) return [];
  const byMonth = Object.fromEntries(months.map(({ month, days }) => [monthKey(month), days])) as DaysByMonth;
  const change = { wateringDaysByMonth: { ...zone.wateringDaysByMonth, ...byMonth } };
  return [{ kind: 'days-by-month', zoneId, months, edit: { type: 'change-zone', zone: zoneId, change } }];
}
