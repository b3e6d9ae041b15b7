/** The minutes a watering day that a planting asks for on a morning. */
import { expectedEtcMm } from '../../../engine/season/expected-days.ts';
import { daysIn } from '../day-span.ts';
import type { TraceStep, TraceValue } from '../trace-step.ts';
import { code, depth, input, minutes, rate } from '../trace-value.ts';
import { goalInput } from './goal.ts';
import { isInMask, type PlantingCell } from './planting-cell.ts';
import { changeInputs, type PlantingMorning, rootedInputs } from './planting-morning.ts';

/** Of a morning on which it asks anew. */
export function minutesAskedStep(cell: PlantingCell, told: PlantingMorning): TraceStep {
  const { keeper, dayOf } = cell;
  const morning = told.asksAlone ? alone(told) : told;
  const { index, depletionMm, minutesAsked, fillingMm, outlook } = morning;
  const { days } = outlook;
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
      ...rootedInputs(morning, index + 1, outlook.last, dayOf),
      ...leftInputs(morning, dayOf),
      goalInput(cell, outlook),
      ...bringing.map(rateOn),
    ],
  };
}

/** As if its day were the week's last. */
function alone(morning: PlantingMorning): PlantingMorning {
  const { index: last, outlook, forecast } = morning;
  const goalMm = outlook.afterRuns * expectedEtcMm(outlook.days, last, forecast);
  return { ...morning, outlook: { ...outlook, last, goalMm } };
}

/** Of a pot: what it uses after the last run of a day, which each later day starts with. */
function leftInputs(
  { index, outlook, forecast }: PlantingMorning,
  dayOf: PlantingCell['dayOf'],
): readonly TraceValue[] {
  const { afterRuns, last, days } = outlook;
  if (afterRuns === 0) return [];
  return daysIn({ first: index, end: last }, (day) => day >= days.demand.first).map((day) =>
    input({ id: 'day-left', day: dayOf(day) }, depth(afterRuns * expectedEtcMm(days, day, forecast))),
  );
}
