/** A watering day that is too long: more watering days, others, a finer timer, or fewer minutes. */
import { type Season, ZONE_FIELDS as Z, type ZoneSeason } from '../../../engine/season/season.ts';
import { seasonSupply } from '../../../engine/supply/season-supply.ts';
import { wateringTimes } from '../../../explain/watering-times.ts';
import { fewerMinutes } from '../fewer-minutes.ts';
import type { NoticeInPlan, RemedyCandidate, RemedyCandidates } from '../remedy.ts';
import { bySpareTime, inOrder } from '../spare-time.ts';
import { smallerSteps } from '../timer-steps.ts';
import { ownWeekdays, withDays, zoneOnDays } from '../weekdays.ts';

/** A day that fills its window but for rounding fits. */
const ROUNDING = 1e-9;

/** So many of the zones that take most of the longest day are looked at. */
const MOST_ZONES = 3;

export function* windowTooShortCandidates(of: NoticeInPlan): RemedyCandidates {
  const { plan, season, notice } = of;
  const weeks = notice.weeks ?? [];
  const zones = longestZones(season, weeks);
  yield* zones.flatMap((zone) => moreDays(of, zone));
  yield* zones.flatMap((zone) => otherDays(of, zone));
  yield* zones.flatMap(({ zone }) => smallerSteps(zone));
  yield* fewerMinutes(plan, season, sharesThatFit);
}

/** The zones that run longest on the days that are too long, longest first. */
function longestZones(season: Season, weeks: readonly number[]): readonly ZoneSeason[] {
  const times = wateringTimes(season);
  const { flows } = seasonSupply(season);
  const minutes = season.zones.map(({ figures }, index) =>
    weeks.reduce((sum, week) => {
      const days = [0, 1, 2, 3, 4, 5, 6].map((offset) => 7 * week + offset);
      const tooLong = days.filter((day) => (times.minutesNeeded[day] as number) > (times.windowMinutes[day] as number));
      const running = tooLong.filter((day) => (flows[index]?.[day] ?? 0) > 0);
      return sum + running.length * figures.at(Z.minutesPerDay, week);
    }, 0),
  );
  return season.zones
    .map((zone, index) => ({ zone, minutes: minutes[index] as number }))
    .filter((each) => each.minutes > 0)
    .toSorted((left, right) => right.minutes - left.minutes)
    .slice(0, MOST_ZONES)
    .map(({ zone }) => zone);
}

/** One weekday more at a time, each the one with the most time to spare; so every run is shorter. */
function moreDays(of: NoticeInPlan, { zone }: ZoneSeason): readonly RemedyCandidate[] {
  const allowed = bySpareTime(of);
  const own = ownWeekdays(of, zone).filter((weekday) => allowed.includes(weekday));
  const others = allowed.filter((weekday) => !own.includes(weekday));
  return others.map((_, index) => {
    const days = inOrder([...own, ...others.slice(0, index + 1)]);
    return withDays(of, 'more-days', [zoneOnDays(of, zone.id, days)]);
  });
}

/** As many days as before, where there is most time to spare. */
function otherDays(of: NoticeInPlan, { zone }: ZoneSeason): readonly RemedyCandidate[] {
  const own = ownWeekdays(of, zone);
  const days = inOrder(bySpareTime(of).slice(0, own.length));
  return days.length === 0 || days.join() === own.join()
    ? []
    : [withDays(of, 'other-days', [zoneOnDays(of, zone.id, days)])];
}

function sharesThatFit(season: Season): ReadonlyMap<number, number> {
  const { minutesNeeded, windowMinutes } = wateringTimes(season);
  const shares = new Map<number, number>();
  minutesNeeded.forEach((needed, day) => {
    const window = windowMinutes[day] as number;
    const week = Math.floor(day / 7);
    if (needed > window * (1 + ROUNDING)) shares.set(week, Math.min(shares.get(week) ?? 1, window / needed));
  });
  return shares;
}
