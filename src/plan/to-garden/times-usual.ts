/** Weeks that are expected to be hotter or cooler, wetter or drier than usual, as the engine sees them: by day of the season. */
import { dayNumber } from '../../engine/calendar.ts';
import type { TimesUsual } from '../../engine/garden.ts';
import type { PlanDeparture, PlanSeason } from '../schema/plan-schema.ts';
import { seasonDays } from '../season-weeks.ts';
import { memoize } from './memoize.ts';

/** Where several have a day, it is multiplied by all of them. */
export const timesUsual = memoize(
  (departures: readonly PlanDeparture[], { firstDay, weeks }: PlanSeason): TimesUsual => {
    const { first } = seasonDays({ firstDay, weeks });
    const times = { eto: new Float64Array(7 * weeks).fill(1), rain: new Float64Array(7 * weeks).fill(1) };
    for (const departure of departures) {
      const from = dayNumber(departure.from) - first;
      for (const figure of ['eto', 'rain'] as const) {
        const { [figure]: factor = 1 } = departure;
        times[figure].forEach((before, day) => {
          if (day >= from && day < from + 7 * departure.weeks) times[figure][day] = before * factor;
        });
      }
    }
    return times;
  },
);
