/** The minutes a watering day that a planting asks for on a morning. */
import { expectedEtcMm, expectedRawMm, isAskingDay, leftAfterRunsMm } from '../../../engine/season/expected-days.ts';
import { tawOn } from '../../../engine/season/planting-demand.ts';
import { daysIn } from '../day-span.ts';
import type { TraceStep, TraceValue } from '../trace-step.ts';
import { code, depth, input, minutes, rate } from '../trace-value.ts';
import { goalInput } from './goal.ts';
import type { PlantingCell } from './planting-cell.ts';
import { changeInputs, type PlantingMorning, rootedInputs } from './planting-morning.ts';
import { isForShortDays, shortDaysWith } from './short-mornings.ts';

/** Of a morning on which it asks anew. */
export function minutesAskedStep(cell: PlantingCell, morning: PlantingMorning): TraceStep {
  const { keeper, dayOf } = cell;
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
  if (morning.asksAlone) {
    const inputs = [
      start,
      ...changeInputs(morning, index, index, dayOf),
      leftInput(morning, index, dayOf),
      rateOn(index),
    ];
    return { ...of, variant: isLimited ? 'alone' : 'no-line', inputs };
  }
  const bringing = daysIn(
    { first: index, end: outlook.last + 1 },
    (day) => isAskingDay(outlook, day) && (days.netMmPerMinute[day] as number) > 0,
  );
  const isShort = isForShortDays(morning);
  const limited = isShort ? 'short' : 'bounds';
  return {
    ...of,
    ...(isShort ? { source: [{ id: 'solved-for-irrigation', cite: 'FAO-56 eq. 84–88' }] as const } : {}),
    variant: isLimited ? limited : 'no-line',
    inputs: [
      start,
      ...changeInputs(morning, index, outlook.last, dayOf),
      ...(isShort ? shortInputs(cell, morning) : []),
      ...rootedInputs(morning, index + 1, outlook.last, dayOf),
      ...leftInputs(morning, dayOf),
      goalInput(cell, outlook),
      ...bringing.map(rateOn),
    ],
  };
}

/** Of the days that are expected to be short with the minutes that it asks for. */
function shortInputs({ dayOf }: PlantingCell, { index, depletionMm, minutesAsked, outlook }: PlantingMorning) {
  const { days } = outlook;
  return shortDaysWith(outlook, index, depletionMm, minutesAsked).flatMap((each) => {
    const day = dayOf(each);
    return [
      input({ id: 'day-demand', day }, depth(expectedEtcMm(days, each))),
      input({ id: 'day-readily-available', day }, depth(expectedRawMm(days, each))),
      input({ id: 'day-available', day }, depth(tawOn(days.demand, each))),
    ];
  });
}

/** Of a pot: how dry each day leaves it that a later one starts with. */
function leftInputs(morning: PlantingMorning, dayOf: PlantingCell['dayOf']): readonly TraceValue[] {
  const { afterRuns, last, days } = morning.outlook;
  if (afterRuns === 0) return [];
  return daysIn({ first: morning.index, end: last }, (day) => day >= days.demand.first).map((day) =>
    leftInput(morning, day, dayOf),
  );
}

/** Of a pot that is full after the last run of a day. */
function leftInput({ outlook }: PlantingMorning, day: number, dayOf: PlantingCell['dayOf']): TraceValue {
  const leftMm = leftAfterRunsMm(outlook.days, outlook.afterRuns, day);
  return input({ id: 'day-left', day: dayOf(day) }, depth(leftMm));
}
