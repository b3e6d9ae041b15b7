/** How often a zone should be watered in the week's month, whatever the plan says. */
import { type DaysAWeek, runsNeedIn, zoneDaysAWeek } from '../../../engine/application/days-a-week.ts';
import { monthOfWeek } from '../../../engine/calendar.ts';
import type { GardenZone } from '../../../engine/garden.ts';
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
  const name = nameIn(zone, fit.plantingId);
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
    ...runsSteps(fit, { season, zoneSeason }),
  ];
}

/** Where one run of a day is too few for somebody. */
function runsSteps(
  fit: DaysAWeek,
  { season, zoneSeason }: Pick<ZoneCell, 'season' | 'zoneSeason'>,
): readonly TraceStep[] {
  const { month, startsADay } = fit;
  const need = startsADay > 1 ? runsNeedIn(season, zoneSeason, fit) : undefined;
  if (need === undefined) return [];
  const { zone } = zoneSeason;
  const name = nameIn(zone, need.plantingId);
  return [
    {
      id: 'runs-a-day',
      month,
      variant: need.isInContainer ? 'pot' : 'ground',
      source: [{ id: 'choice' }],
      inputs: [
        input({ id: 'runs-readily-available', name }, depth(need.readilyAvailableMm)),
        input({ id: 'runs-use', name }, depth(need.useMm)),
        input('starts-a-day', count(zone.startsADay)),
      ],
      result: count(startsADay),
    },
  ];
}

function nameIn({ plantings }: GardenZone, id: string): string {
  const planting = plantings.find((each) => each.id === id);
  return planting === undefined ? id : distinctName(planting, plantings);
}
