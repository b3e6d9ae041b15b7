/** A watering morning of a zone as it was decided, for whoever asks why. */
import { isPresentOn, type ZoneMember } from './zone-member.ts';
import type { ZoneMorning } from './zone-morning.ts';

export interface ToldMorning {
  /** Counted from the season's first day. */
  readonly day: number;
  /** Minutes of that day; a given week's are the given ones. */
  readonly minutes: number;
  /** Decided anew, from what was known that morning; else the number of an earlier morning stands. */
  readonly decided: ZoneMorning | undefined;
  /** In the zone's order. */
  readonly plantings: readonly ToldPlanting[];
}

export interface ToldPlanting {
  readonly isPresent: boolean;
  /** At the morning's start, mm. */
  readonly depletionMm: number;
  readonly goalMm: number;
  /** Expected demand less rain from this day to the end of the week's last watering day, mm. */
  readonly changeMm: number;
  /** Net depth of a minute on each watering day from this on, mm. */
  readonly gainMm: number;
  /** Infinity where no line brings any. */
  readonly minutesAsked: number;
  readonly isDue: boolean;
  readonly openMask: number;
}

export function toldMorning(
  members: readonly ZoneMember[],
  { day, minutes, decided }: Pick<ToldMorning, 'day' | 'minutes' | 'decided'>,
): ToldMorning {
  const plantings = members.map((member): ToldPlanting => {
    const { outlook, request } = member;
    const at = day - outlook.start;
    const isPresent = isPresentOn(member, day);
    return {
      isPresent,
      depletionMm: member.depletionMm,
      goalMm: outlook.goalMm,
      changeMm: isPresent ? (outlook.changeMm[at] as number) : 0,
      gainMm: isPresent ? (outlook.gainMm[at] as number) : 0,
      minutesAsked: isPresent ? request.minutesPerDay : 0,
      isDue: ((member.dueMask >> at) & 1) === 1,
      openMask: member.openMask,
    };
  });
  return { day, minutes, decided, plantings };
}
