/** How much water a planting needed in its week, or why it needed none. */
import { forecastOn } from '../../../engine/forecast.ts';
import type { TraceStep, TraceValue } from '../trace-step.ts';
import { code, days, depth, input } from '../trace-value.ts';
import { goalInput } from './goal.ts';
import type { PlantingCell } from './planting-cell.ts';
import { outlookOn } from './planting-morning.ts';
import { fillingsOf } from './refill.ts';

export function needStep(cell: PlantingCell): TraceStep {
  const { mornings, keeper, at } = cell;
  const result = depth(at('neededMm'));
  const of = { id: 'need', source: [{ id: 'choice' }], result } as const;
  if (mornings.length === 0) {
    return { ...of, variant: 'no-watering-day', inputs: [input('watering-days-in-ground', days(0))] };
  }
  if (keeper.isRefill && at('dueMask') === 0) {
    return { ...of, variant: 'left-alone', inputs: [input('due', code('answer', 'no'))] };
  }
  if (keeper.isRefill) return { ...of, variant: 'filled', inputs: dueInputs(cell) };
  const outlook = lastOutlook(cell);
  return {
    id: 'need',
    variant: 'watered',
    source: ['FAO-56 eq. 85–88'],
    inputs: [
      input('depletion-start', depth(at('depletionStartMm'))),
      ...cell.daily
        .filter(({ index }) => index <= outlook.last)
        .map(({ day, etcMm, soakedMm }) => input({ id: 'day-change', day }, depth(etcMm - soakedMm))),
      goalInput(cell, outlook),
    ],
    result,
  };
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
function lastOutlook({ season, zone: { wateringDays: mask }, week, days: of }: PlantingCell) {
  const lastMorning = 7 * week + 31 - Math.clz32(mask);
  return outlookOn(of, { week, mask, forecast: forecastOn(season.weather.forecasts, lastMorning) });
}
