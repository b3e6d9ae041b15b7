/** Which shut-offs of a zone are open on which days of a week: named on a planting's first watering morning, for whoever turns them. */
import { forecastOn } from '../forecast.ts';
import type { WeekChoice } from '../garden.ts';
import { nearestRun } from '../soil/cycle-and-soak.ts';
import type { GivenMinutes } from './given-minutes.ts';
import { openDaysMask } from './open-days.ts';
import type { WeekOutlook } from './week-outlook.ts';
import { isPresentOn, minutesToFill, type ZoneMember } from './zone-member.ts';
import { isDeciding } from './zone-morning.ts';
import type { ZoneRun } from './zone-run.ts';

/** What a person said of a week. */
export interface WeekGiven {
  readonly choice: WeekChoice | undefined;
  readonly given: GivenMinutes | undefined;
}

/** At the week's start: lines without a shut-off are open, and so is what was logged as open. */
export function openLogged({ season, members }: ZoneRun, given: GivenMinutes | undefined): void {
  for (let at = 0; at < members.length; at++) {
    const member = members[at] as ZoneMember;
    const { id, hasShutOff } = member.season.planting;
    if (given?.runs !== undefined) {
      for (const [day, { open }] of given.runs) if (!hasShutOff || open?.has(id)) member.openMask |= 1 << day;
    }
    if (!hasShutOff) member.openMask |= season.zone.wateringDays;
  }
}

/**
 * On a planting's first watering morning of the week: the days on which its shut-off is open. `isWatered`: on that day a line brings water
 * to somebody; days named by hand are known before.
 */
export function openShutOffs(run: ZoneRun, day: number, { choice, given }: WeekGiven, isWatered: boolean): void {
  const { members, masks, week, scratch, weather } = run;
  for (let at = 0; at < members.length; at++) {
    const member = members[at] as ZoneMember;
    const { planting } = member.season;
    if (!planting.hasShutOff || member.isOpened || !isPresentOn(member, day)) continue;
    const byHand = choice?.openDays?.get(planting.id);
    if (!isWatered && byHand === undefined) continue;
    member.isOpened = true;
    const ran = given?.runs === undefined ? (week.minutes[day - week.start] as number) : Math.max(...week.minutes);
    const mask =
      byHand === undefined
        ? openDaysMask(member, scratch[at] as WeekOutlook, {
            masks,
            minutes: given === undefined ? Math.max(ran, fillingMinutes(run, member)) : ran,
            day,
            forecast: forecastOn(weather.forecasts, day),
          })
        : (masks[Math.min(byHand, masks.length - 1)] as number);
    member.openMask |= mask & unloggedDays(given);
  }
}

/** What the zone will run for a refill that decides its minutes; 0 for any other planting. */
function fillingMinutes({ season, requests }: ZoneRun, { filling, days, request }: ZoneMember): number {
  if (filling === undefined || !isDeciding(season.zone.rule, requests, request)) return 0;
  const minutes = minutesToFill(filling.depletionMm, days.netMmPerMinute[filling.day] as number);
  return minutes < Number.POSITIVE_INFINITY ? nearestRun(minutes, season.zone, true).minutes : 0;
}

/** Days on which a shut-off is open as computed: all, or of a week that was logged by day those whose open shut-offs were not. */
function unloggedDays(given: GivenMinutes | undefined): number {
  if (given?.runs === undefined) return EVERY_DAY;
  let mask = 0;
  for (const [day, { open }] of given.runs) if (open === undefined) mask |= 1 << day;
  return mask;
}

const EVERY_DAY = 0b1111111;
