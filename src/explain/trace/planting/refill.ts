/** When a planting that is filled deep and seldom is due, and whether it has been filled. */

import { expectedChangeMm, rootedOn } from '../../../engine/season/expected-days.ts';
import { dueAboveMm, isFilled } from '../../../engine/season/refill.ts';
import type { TraceStep, TraceValue } from '../trace-step.ts';
import { code, depth, input, weekdays } from '../trace-value.ts';
import { type CellDay, isInMask, isParted, type PlantingCell, startStores } from './planting-cell.ts';
import { allowedInputs, changeInputs, nextWatering, type PlantingMorning, rootedInputs } from './planting-morning.ts';

/** From the morning on which it became due, or the week's start, to the day that filled it, or the week's end. */
export interface Filling {
  readonly fillingMm: number;
  /** Left out where it was due before the week. */
  readonly morning?: PlantingMorning;
  readonly end: CellDay;
  readonly isFilled: boolean;
}

export function refillSteps(cell: PlantingCell): readonly TraceStep[] {
  if (!cell.keeper.isRefill || cell.mornings.length === 0) return [];
  const fillings = fillingsOf(cell);
  const looks = cell.planting.hasShutOff ? lookAheadSteps(cell, fillings) : [];
  if (fillings.length === 0) return looks.length > 0 ? looks : notDueSteps(cell);
  return [...looks, ...fillings.flatMap((filling) => [dueStep(cell, filling), filledStep(filling)])];
}

/** Each time in the week that it is due. */
export function fillingsOf({ week, own, daily, mornings, before }: PlantingCell): readonly Filling[] {
  const fillings: Filling[] = [];
  let due: Pick<Filling, 'fillingMm' | 'morning'> | undefined =
    own.demand.first < 7 * week && before('fillingMm') > 0 ? { fillingMm: before('fillingMm') } : undefined;
  for (const end of daily) {
    const morning = mornings.find(({ index }) => index === end.index);
    if (due === undefined && morning !== undefined && morning.fillingMm > 0) {
      due = { fillingMm: morning.fillingMm, morning };
    }
    if (due !== undefined && isFilledOn(end, due.fillingMm)) {
      fillings.push({ ...due, end, isFilled: true });
      due = undefined;
    }
  }
  const end = daily.at(-1);
  return due === undefined || end === undefined ? fillings : [...fillings, { ...due, end, isFilled: false }];
}

function isFilledOn({ wetted: { startMm, irrigationMm, endMm } }: CellDay, fillingMm: number): boolean {
  return isFilled(Math.min(startMm - irrigationMm, endMm), fillingMm);
}

/** Behind a shut-off: on the first watering morning of the week, the one on which it is expected to be due. */
function lookAheadSteps(cell: PlantingCell, fillings: readonly Filling[]): readonly TraceStep[] {
  const morning = cell.mornings.find(({ isLooked }) => isLooked);
  const isStillDue = fillings.some(
    (filling) => filling.morning === undefined && filling.end.index >= (morning?.index ?? 0),
  );
  if (morning === undefined || isStillDue) return [];
  const { dayOf } = cell;
  const { index, outlook, filling } = morning;
  const on = filling?.day ?? nearestTo(morning);
  return [
    {
      id: 'refill-expected',
      day: dayOf(index),
      source: [{ id: 'choice-refill', cite: 'FAO-56 Example 38, pp. 172–173' }],
      inputs: [
        input({ id: 'day-depletion-start', day: dayOf(index) }, depth(morning.depletionMm)),
        ...changeInputs(morning, index, on - 1, dayOf),
        ...rootedInputs(morning, index + 1, on, dayOf),
        ...allowedInputs(morning, { from: on, until: nextWatering(outlook, on), isGrown: true }, dayOf),
      ],
      result: filling === undefined ? code('limit', 'none') : weekdays([dayOf(filling.day)]),
    },
  ];
}

/** Left alone from a morning on: the watering morning of the week on which it comes nearest to being due. */
function nearestTo({ index, depletionMm, outlook }: PlantingMorning): number {
  let nearest = { day: index, aboveMm: Number.NEGATIVE_INFINITY };
  let alone = depletionMm;
  for (let day = index; day <= outlook.last; day++) {
    const aboveMm = alone - dueAboveMm(outlook, day);
    if (isInMask(outlook.mask, day - outlook.start) && aboveMm > nearest.aboveMm) nearest = { day, aboveMm };
    alone = Math.max(0, alone + expectedChangeMm(outlook.days, day)) + rootedOn(outlook.days, day + 1);
  }
  return nearest.day;
}

/** The morning of the week on which it comes nearest to being due. */
function notDueSteps(cell: PlantingCell): readonly TraceStep[] {
  const looked = cell.mornings.filter(({ isLooked }) => isLooked);
  const above = ({ depletionMm, outlook, index }: PlantingMorning) => depletionMm - dueAboveMm(outlook, index);
  const [first, ...others] = looked;
  if (first === undefined || cell.planting.hasShutOff) return [];
  return [
    lookStep(
      cell,
      others.reduce((best, other) => (above(other) > above(best) ? other : best), first),
      'no',
    ),
  ];
}

function dueStep(cell: PlantingCell, { morning, fillingMm }: Filling): TraceStep {
  const { dayOf, ground } = cell;
  if (morning !== undefined && !cell.planting.hasShutOff) return lookStep(cell, morning, 'yes');
  const of = { id: 'refill-due', source: [{ id: 'choice' }], result: code('answer', 'yes') } as const;
  if (morning !== undefined) {
    const day = dayOf(morning.index);
    const expected = input('days-due', weekdays([dayOf(morning.filling?.day ?? morning.index)]));
    const inputs = [expected, input({ id: 'day-depletion-start', day }, depth(morning.depletionMm))];
    return { ...of, day, variant: 'expected', inputs };
  }
  return {
    ...of,
    day: dayOf(ground.first),
    variant: 'still',
    inputs: [input('filling', depth(fillingMm)), startInput(cell)],
  };
}

/** Of the ground that its lines wet, where that is a part. */
export function startInput(cell: PlantingCell): TraceValue {
  return isParted(cell)
    ? input({ id: 'part-depletion', part: 'wetted' }, depth(startStores(cell).wettedMm))
    : input('depletion-start', depth(cell.at('depletionStartMm')));
}

function lookStep({ dayOf }: PlantingCell, morning: PlantingMorning, answer: 'yes' | 'no'): TraceStep {
  const { index, depletionMm, outlook } = morning;
  return {
    id: 'refill-due',
    day: dayOf(index),
    variant: 'morning',
    source: [{ id: 'choice-refill', cite: 'FAO-56 Example 38, pp. 172–173' }],
    inputs: [
      input({ id: 'day-depletion-start', day: dayOf(index) }, depth(depletionMm)),
      ...allowedInputs(morning, { from: index, until: nextWatering(outlook, index), isGrown: true }, dayOf),
    ],
    result: code('answer', answer),
  };
}

function filledStep({ fillingMm, end, isFilled: isDone }: Filling): TraceStep {
  const { day } = end;
  return {
    id: 'refilled',
    day,
    source: [{ id: 'choice' }],
    inputs: [
      input('filling', depth(fillingMm)),
      input({ id: 'day-depletion-start', day }, depth(end.wetted.startMm)),
      input({ id: 'day-irrigation', day }, depth(end.wetted.irrigationMm)),
      input({ id: 'day-depletion-end', day }, depth(end.wetted.endMm)),
    ],
    result: code('answer', isDone ? 'yes' : 'no'),
  };
}
