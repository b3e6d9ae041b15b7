/** How often a zone should be watered in the week's month, whatever the plan says. */
import { zoneDaysAWeek } from '../../../engine/application/days-a-week.ts';
import { monthOfWeek } from '../../../engine/calendar.ts';
import { daysIn, weekSpan } from '../day-span.ts';
import { isInMask } from '../planting/planting-cell.ts';
import type { TraceStep } from '../trace-step.ts';
import { code, count, days, depth, input, weekdays } from '../trace-value.ts';
import { distinctName, type ZoneCell } from './zone-cell.ts';

/** None in a month in which nothing that a line waters uses any. */
export function daysAWeekSteps({ season, zoneSeason, week }: ZoneCell): readonly TraceStep[] {
  const { zone } = zoneSeason;
  const { firstDay } = season.garden.span;
  const month = monthOfWeek(firstDay + 7 * week);
  const fit = zoneDaysAWeek(season, zoneSeason).find((each) => each.month === month);
  if (fit === undefined) return [];
  const planting = zone.plantings.find(({ id }) => id === fit.plantingId);
  const name = planting === undefined ? fit.plantingId : distinctName(planting, zone.plantings);
  const lasting = [
    input({ id: 'water-at-hand', name }, depth(fit.waterAtHandMm)),
    input({ id: 'daily-use', name }, depth(fit.dailyUseMm)),
  ];
  const allowed = daysIn(weekSpan(week), (day) => isInMask(fit.allowedMask, day - 7 * week));
  const source = [{ id: 'not-checked', cite: 'USDA-NRCS NEH Part 652' }, { id: 'choice' }] as const;
  return [
    {
      id: 'days-a-week',
      month,
      source,
      inputs: [
        ...lasting,
        input(
          'allowed-days',
          allowed.length === 0 ? code('limit', 'none') : weekdays(allowed.map((day) => firstDay + day)),
        ),
      ],
      result: days(fit.daysAWeek),
    },
    ...(fit.startsADay > 1
      ? [
          {
            id: 'runs-a-day',
            month,
            source,
            inputs: [...lasting, input('starts-a-day', count(zone.startsADay))],
            result: count(fit.startsADay),
          } as const,
        ]
      : []),
  ];
}
