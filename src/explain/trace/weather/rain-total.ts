/** How a gauge's total came to the days of its week. */
import { RAIN_ORIGINS } from '../../../engine/rain/daily-rain.ts';
import { usualShare, type WeekTotal, weekTotals, wetDays } from '../../../engine/rain/week-total.ts';
import type { Season } from '../../../engine/season/season.ts';
import { daysIn, sumOver } from '../day-span.ts';
import type { TraceStep } from '../trace-step.ts';
import { count, date, depth, factor, input, weekdays } from '../trace-value.ts';

const OBSERVED_DAY = RAIN_ORIGINS.indexOf('observed-day');

/** `indexes`: days of one week that have their share from its total, at least one. */
export function rainTotalStep({ garden, weather }: Season, indexes: readonly number[]): TraceStep {
  const { span, observed, site } = garden;
  const { rain } = weather;
  const first = 7 * Math.floor((indexes[0] as number) / 7);
  const total = weekTotals(span, observed.weeks).find((each) => each.first === first) as WeekTotal;
  const own = daysIn(total, (index) => rain.origin[index] === OBSERVED_DAY);
  const free = daysIn(total, (index) => rain.origin[index] !== OBSERVED_DAY);
  const share = usualShare(total, { firstDay: span.firstDay, climate: site.climate });
  const daysOf = (all: readonly number[]) => weekdays(all.map((index) => span.firstDay + index));
  const isAssumed = site.climate.rainDays === undefined;
  return {
    id: 'rain-week-total',
    source: [{ id: 'observed' }, { id: isAssumed ? 'choice-rain-days-assumed' : 'choice-rain-days' }],
    inputs: [
      input('week-total', depth(total.totalMm)),
      input('read-through', date(span.firstDay + total.end - 1)),
      input('own-figure-total', depth(sumOver(rain.mm, own))),
      input('sharing-days', count(free.length)),
      input('rain-day-share', factor(share)),
      input('days-wet', daysOf(wetDays(free, share))),
      input('days-of-week', daysOf(indexes)),
    ],
    result: depth(sumOver(rain.mm, indexes)),
  };
}
