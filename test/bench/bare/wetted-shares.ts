/** Of a planting's ground, what its lines wet, in the bare loop. */
import type { GardenPlanting } from '../../../src/engine/garden.ts';
import type { Weather } from '../../../src/engine/weather.ts';

export function sharesByWeek({ wettedShare = 1, wettedShareByWeek }: GardenPlanting, weeks: number): readonly number[] {
  return Array.from({ length: weeks }, (_, week) => wettedShareByWeek?.[week] ?? wettedShare);
}

/**
 * For each month of the season what most weeks of its calendar month have, the first of them where several do: a week is of the month of
 * its fourth day. The bench's season has weeks of every month.
 */
export function usualByMonth(
  byWeek: readonly number[],
  { starts, calendarMonth }: Weather['months'],
): readonly number[] {
  const monthOf = byWeek.map((_, week) => calendarMonth[starts.findLastIndex((start) => start <= 7 * week + 3)]);
  return calendarMonth.map((month) => {
    const ofMonth = byWeek.filter((_, week) => monthOf[week] === month);
    const weeksWith = (share: number) => ofMonth.filter((each) => each === share).length;
    return ofMonth.reduce((most, each) => (weeksWith(each) > weeksWith(most) ? each : most));
  });
}
