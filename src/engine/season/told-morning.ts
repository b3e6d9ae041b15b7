/** A watering morning of a zone as it was decided, for whoever asks why. */
import type { ExpectedFilling } from './refill.ts';
import type { WeekOutlook } from './week-outlook.ts';
import { isPresentOn, type ZoneMember } from './zone-member.ts';
import type { ZoneMorning } from './zone-morning.ts';
import type { ZoneRun } from './zone-run.ts';

export interface ToldMorning {
  /** Counted from the season's first day. */
  readonly day: number;
  /** Minutes of that day; a given week's are the given ones. */
  readonly minutes: number;
  /** What they would be if nothing were cut. */
  readonly uncutMinutes: number;
  /** Decided anew, from what was known that morning; else the number of an earlier morning stands. */
  readonly decided: ZoneMorning | undefined;
  /** In the zone's order. */
  readonly plantings: readonly ToldPlanting[];
}

export interface ToldPlanting {
  readonly isPresent: boolean;
  /** At the morning's start of the ground that its lines wet, and of the rest, mm over each. */
  readonly depletionMm: number;
  readonly dryMm: number;
  /** Depletion at which a refill that is due became so, mm; 0 = not due. */
  readonly fillingMm: number;
  /** Of a refill behind a shut-off, once its first watering morning of the week looked: when it is expected to be due. */
  readonly filling: ExpectedFilling | undefined;
  /** Net depth of a minute of this day, mm. */
  readonly netMm: number;
  /** Infinity where no line brings any. */
  readonly minutesAsked: number;
  /** Asked anew on this morning; else its number of an earlier one stands. */
  readonly isAsked: boolean;
  /** Asks for what this morning lacks alone. */
  readonly asksAlone: boolean;
  readonly openMask: number;
  readonly ahead: LookedAhead;
}

/** From where it looked ahead. */
export type LookedAhead = Pick<WeekOutlook, 'dryFrom' | 'dryMm' | 'afterRuns'>;

export function toldMorning({ members, week }: ZoneRun, day: number, decided: ZoneMorning | undefined): ToldMorning {
  const plantings = members.map((member: ZoneMember): ToldPlanting => {
    const { days, request, stores, outlook } = member;
    const { dryFrom, dryMm, afterRuns } = outlook;
    const isPresent = isPresentOn(member, day);
    return {
      isPresent,
      depletionMm: stores.wettedMm,
      dryMm: stores.dryMm,
      fillingMm: member.fillingMm,
      filling: member.filling,
      netMm: isPresent ? (days.netMmPerMinute[day] as number) : 0,
      minutesAsked: isPresent ? request.minutesPerDay : 0,
      isAsked: member.askedOn === day,
      asksAlone: member.asksAlone,
      openMask: member.openMask,
      ahead: { dryFrom, dryMm, afterRuns },
    };
  });
  const minutes = week.minutes[day - week.start] as number;
  const uncutMinutes = minutes + (week.cutMinutes[day - week.start] as number);
  return { day, minutes, uncutMinutes, decided, plantings };
}
