/** How long water would run in a season when it may not. */
import type { Season } from '../../engine/season/season.ts';
import { wateringTimes } from '../../explain/watering-times.ts';

/** Minutes beyond the hours of days, and of these the ones on days on which no water may run. */
export function minutesForbidden(season: Season): readonly [beyondHours: number, onClosedDays: number] {
  const { minutesNeeded, windowMinutes } = wateringTimes(season);
  let beyond = 0;
  let closed = 0;
  minutesNeeded.forEach((minutes, day) => {
    const window = windowMinutes[day] as number;
    beyond += Math.max(0, minutes - window);
    if (window === 0) closed += minutes;
  });
  return [beyond, closed];
}
