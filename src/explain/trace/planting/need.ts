/** How much water a planting needed in its week, or why it needed none. */

import { forecastOn } from '../../../engine/forecast.ts';
import { heldMask } from '../../../engine/season/week-masks.ts';
import { daysIn } from '../day-span.ts';
import type { TraceStep, TraceValue } from '../trace-step.ts';
import { code, days, depth, input } from '../trace-value.ts';
import { goalInput } from './goal.ts';
import { isInMask, isParted, type PlantingCell } from './planting-cell.ts';
import { outlookOn, rootedInputs } from './planting-morning.ts';
import { fillingsOf } from './refill.ts';
import { shareInput } from './wetted.ts';

export function needStep(cell: PlantingCell): TraceStep {
  const { mornings, keeper, at } = cell;
  const result = depth(at('neededMm'));
  const of = { id: 'need', source: [{ id: 'choice' }], result } as const;
  if (mornings.length === 0 && isAtRest(cell)) {
    return { ...of, variant: 'resting', inputs: [input('resting', code('answer', 'yes'))] };
  }
  if (mornings.length === 0) {
    return { ...of, variant: 'no-watering-day', inputs: [input('watering-days-in-ground', days(0))] };
  }
  if (keeper.isRefill && at('dueMask') === 0) {
    return { ...of, variant: 'left-alone', inputs: [input('due', code('answer', 'no'))] };
  }
  const share = shareInput(cell);
  if (keeper.isRefill) {
    return { ...of, variant: isParted(cell) ? 'part-filled' : 'filled', inputs: [...dueInputs(cell), ...share] };
  }
  const outlook = lastOutlook(cell);
  return {
    id: 'need',
    variant: isParted(cell) ? 'part-watered' : 'watered',
    source: ['FAO-56 eq. 85–88'],
    inputs: [
      firstInput(cell),
      ...cell.daily
        .filter(({ index }) => index <= outlook.last)
        .map(({ day, askedOfWettedMm, soakedMm }) =>
          input({ id: 'day-change', day }, depth(askedOfWettedMm - soakedMm)),
        ),
      ...rootedInputs({ outlook }, cell.ground.first + 1, outlook.last, cell.dayOf),
      goalInput(cell, outlook),
      ...share,
    ],
    result,
  };
}

/** As the first day finds it, where its roots have grown by then. */
function firstInput({ daily, dayOf, ground }: PlantingCell): TraceValue {
  return input({ id: 'day-depletion-start', day: dayOf(ground.first) }, depth(daily[0]?.wetted.startMm ?? 0));
}

/** On every watering day of its days in the ground. */
function isAtRest({ days: { demand }, zone, week, ground }: PlantingCell): boolean {
  const watering = daysIn(ground, (day) => isInMask(heldMask(zone, week), day - 7 * week));
  return watering.length > 0 && watering.every((day) => demand.rest?.[day] === 1);
}

/** Depletion on each morning on which it became due, and on the first on which it was so still. */
function dueInputs(cell: PlantingCell): readonly TraceValue[] {
  return fillingsOf(cell).flatMap(({ morning, end }) => {
    const due =
      morning ??
      cell.mornings.find(({ index, isLooked, fillingMm }) => isLooked && fillingMm > 0 && index <= end.index);
    if (due === undefined) return [];
    return [input({ id: 'day-depletion-start', day: cell.dayOf(due.index) }, depth(due.depletionMm))];
  });
}

/** As the zone's last watering morning of the week looked ahead. */
function lastOutlook({ season, zone, week, days: of, mornings }: PlantingCell) {
  const mask = heldMask(zone, week);
  const lastMorning = 7 * week + (mask === 0 ? 0 : 31 - Math.clz32(mask));
  const ahead = mornings.at(-1)?.ahead ?? { dryFrom: 7 * week, dryMm: 0, afterRuns: 0 };
  return outlookOn(of, { week, zone, forecast: forecastOn(season.weather.forecasts, lastMorning), ahead });
}
