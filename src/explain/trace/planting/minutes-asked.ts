/** The minutes a watering day that a planting asks for on a morning. */
import { daysIn } from '../day-span.ts';
import type { TraceStep } from '../trace-step.ts';
import { code, depth, input, minutes, rate } from '../trace-value.ts';
import { goalInput } from './goal.ts';
import { isInMask, type PlantingCell } from './planting-cell.ts';
import { changeInputs, type PlantingMorning } from './planting-morning.ts';

/** Of a morning on which it asks anew. */
export function minutesAskedStep(cell: PlantingCell, morning: PlantingMorning): TraceStep {
  const { keeper, days, dayOf } = cell;
  const { index, depletionMm, minutesAsked, fillingMm, outlook } = morning;
  const of = {
    id: 'minutes-asked',
    day: dayOf(index),
    source: [{ id: 'solved-for-irrigation', cite: 'FAO-56 eq. 85–88' }],
    result: minutesAsked === Number.POSITIVE_INFINITY ? code('limit', 'no-run-is-enough') : minutes(minutesAsked),
  } as const;
  if (keeper.isRefill && fillingMm === 0) {
    return { ...of, variant: 'left-alone', inputs: [input('due', code('answer', 'no'))] };
  }
  const start = input({ id: 'day-depletion-start', day: dayOf(index) }, depth(depletionMm));
  const isLimited = minutesAsked < Number.POSITIVE_INFINITY;
  const rateOn = (day: number) =>
    input({ id: 'day-net-rate', day: dayOf(day) }, rate(60 * (days.netMmPerMinute[day] as number)));
  if (keeper.isRefill) return { ...of, variant: isLimited ? 'filling' : 'no-line', inputs: [start, rateOn(index)] };
  const bringing = daysIn(
    { first: index, end: outlook.last + 1 },
    (day) => isInMask(outlook.mask, day - outlook.start) && (days.netMmPerMinute[day] as number) > 0,
  );
  return {
    ...of,
    variant: isLimited ? 'bounds' : 'no-line',
    inputs: [
      start,
      ...changeInputs(morning, index, outlook.last, dayOf),
      goalInput(cell, outlook),
      ...bringing.map(rateOn),
    ],
  };
}
