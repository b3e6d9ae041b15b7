/** Which shut-offs of a zone are open on which days of a week: named on a planting's first watering morning, for whoever turns them. */
import type { WeekChoice } from '../garden.ts';
import { EVERY_DAY, type GivenMinutes, RUN } from './given-minutes.ts';
import { openDaysMask } from './open-days.ts';
import { minutesExpected } from './refill.ts';
import { isInGround, isPresentOn, type ZoneMember } from './zone-member.ts';
import type { MinutesRequest } from './zone-minutes.ts';
import { isDeciding } from './zone-morning.ts';
import { COMPUTED, type ZoneRun } from './zone-run.ts';

/** What a person said of a week. */
export interface WeekGiven {
  readonly choice: WeekChoice | undefined;
  readonly given: GivenMinutes | undefined;
}

/** At the week's start: lines without a shut-off are open, and so is what was logged as open. */
export function openLogged({ week, members }: ZoneRun, given: GivenMinutes | undefined): void {
  for (const member of members) {
    const { plantingId: id, hasShutOff } = member.request;
    if (given?.runs !== undefined) {
      for (const [day, { open }] of given.runs) if (!hasShutOff || open?.has(id)) member.openMask |= 1 << day;
    }
    if (!hasShutOff) member.openMask |= week.mask;
  }
}

/**
 * On a planting's first watering morning of the week: the days on which its shut-off is open. `isWatered`: on that day a line brings water
 * to somebody; days named by hand are known before.
 */
export function openShutOffs(run: ZoneRun, day: number, { choice, given }: WeekGiven, isWatered: boolean): void {
  const { members, masks, week, scratch } = run;
  const isGiven = week.origin !== COMPUTED;
  for (const member of members) {
    const byHand = choice?.openDays?.get(member.request.plantingId);
    if (!isDecidedOn(member, day, byHand !== undefined, isWatered)) continue;
    member.isOpened = true;
    const at = day - week.start;
    // Days are named as if nothing were cut.
    const ran =
      isGiven && given?.runs
        ? Math.max(...week.minutes)
        : (week.minutes[at] as number) + (week.cutMinutes[at] as number);
    const mask =
      byHand === undefined
        ? openDaysMask(member, scratch, {
            masks,
            minutes: ran,
            minutesOn: minutesExpected(
              ran,
              isGiven || !member.filling ? [] : decidingFillings(run, member),
              week.timer,
            ),
            day,
          })
        : (masks[Math.min(byHand, masks.length - 1)] as number);
    // Until it is named a shut-off is closed.
    member.openMask |= mask & (EVERY_DAY << at) & unloggedDays(given);
  }
}

/** Days that a person named hold for a planting at rest too. */
function isDecidedOn(member: ZoneMember, day: number, isByHand: boolean, isWatered: boolean): boolean {
  if (!member.request.hasShutOff || member.isOpened) return false;
  return isByHand ? isInGround(member, day) : isWatered && isPresentOn(member, day);
}

/** Of the plantings whose request makes the zone's minutes; of one of them its own alone. */
function decidingFillings({ season, requests, members }: ZoneRun, { request, filling }: ZoneMember) {
  const decides = (each: MinutesRequest) => isDeciding(season.zone.rule, requests, each);
  if (decides(request)) return [filling];
  return members.map((each) => (decides(each.request) ? each.filling : undefined));
}

/** Days on which a shut-off is open as computed: those of which it is not logged, of a week that ran as logged those of its runs. */
function unloggedDays(given: GivenMinutes | undefined): number {
  if (given?.runs === undefined) return EVERY_DAY;
  let mask = given.origin === RUN ? 0 : EVERY_DAY;
  for (const [day, { open }] of given.runs) mask = open === undefined ? mask | (1 << day) : mask & ~(1 << day);
  return mask;
}
