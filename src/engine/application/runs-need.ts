/** Runs a day that the plantings of a zone need in some weeks, by the rule of the season. */
import { daysOfMask } from '../season/days-mask.ts';
import type { PlantingSeason, ZoneSeason } from '../season/season.ts';
import { runsNeeded } from '../season/week-timer.ts';
import { shareIn } from '../season/wetted-week.ts';

/** On the day on which most are needed. */
export interface RunsNeed {
  readonly runs: number;
  readonly plantingId: string;
  readonly isInContainer: boolean;
  /** Over the ground that its lines wet, mm. */
  readonly readilyAvailableMm: number;
  readonly useMm: number;
}

/**
 * The greatest of the plantings and weeks, of days on which the season would run: bit 0 of a week's mask is its first day. Undefined where one
 * run does everywhere.
 */
export function runsNeed(
  { plantings }: ZoneSeason,
  firstDay: number,
  weeks: readonly number[],
  maskOf: (week: number) => number,
): RunsNeed | undefined {
  let most: RunsNeed | undefined;
  for (const own of plantings) {
    const netMmPerMinute = wateredDays(own, firstDay);
    for (const week of weeks) {
      const share = shareIn(own.planting, week);
      const demand = { ...own.demand, share };
      for (const offset of daysOfMask(maskOf(week))) {
        const runs = runsNeeded({ demand, netMmPerMinute }, { start: 7 * week, mask: 1 << offset });
        if (runs <= (most?.runs ?? 1)) continue;
        const day = 7 * week + offset;
        most = {
          runs,
          plantingId: own.planting.id,
          isInContainer: demand.isInContainer,
          readilyAvailableMm: demand.expectedRawMm[day] as number,
          useMm: (demand.expectedEtcMm[day] as number) / share,
        };
      }
    }
  }
  return most;
}

/** 1 on each day of the season on which a line brings water. */
function wateredDays({ planting, weeks }: PlantingSeason, firstDay: number): Uint8Array {
  const watered = new Uint8Array(7 * weeks);
  for (const { from, to, flowLph } of planting.flows) {
    if (flowLph > 0) watered.fill(1, Math.max(0, from - firstDay), Math.max(0, to + 1 - firstDay));
  }
  return watered;
}
