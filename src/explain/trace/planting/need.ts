/** How much water a planting asks for in its week, or why it asks for none. */
import { endDepletionMm } from '../../../engine/soil/root-zone-day.ts';
import { daysIn } from '../day-span.ts';
import type { TraceLabel, TraceStep } from '../trace-step.ts';
import { code, days, depth, input } from '../trace-value.ts';
import { type PlantingCell, totalOf } from './planting-cell.ts';
import { targetStep } from './soil.ts';

export function needSteps(cell: PlantingCell): readonly TraceStep[] {
  const refill = cell.planting.watering === 'refill' ? [refillStep(cell)] : [];
  if (cell.course.last < 0) return [...refill, noWateringDayStep(cell)];
  if (!cell.isDue) return [...refill, leftAloneStep(cell)];
  return [...refill, targetStep(cell), goalStep(cell), needStep(cell)];
}

/** Whether it is filled this week, by the day on which, left alone, it would be the furthest beyond its allowed depletion. */
function refillStep(cell: PlantingCell): TraceStep {
  const { rawMm, end } = cell.days.demand;
  const { start, mask, first, depletionMm } = cell.course;
  const horizon = Math.min(end, start + 7 + 31 - Math.clz32(mask));
  const indexes = daysIn({ first, end: horizon });
  const alone = leftAlone(cell, indexes, depletionMm);
  const beyond = (offset: number) => (alone[offset] as number) - (rawMm[indexes[offset] as number] as number);
  const driest = indexes.reduce((worst, _, offset) => (beyond(offset) > beyond(worst) ? offset : worst), 0);
  const index = indexes[driest] as number;
  const then = { day: cell.dayOf(index), nextWeek: index >= start + 7 };
  return {
    id: 'refill-due',
    source: ['FAO-56 Example 38, pp. 172–173', { id: 'choice-look-ahead' }],
    inputs: [
      input({ id: 'depletion-left-alone', ...then }, depth(alone[driest] as number)),
      input({ id: 'readily-available-then', ...then }, depth(rawMm[index] as number)),
    ],
    result: code('answer', cell.isDue ? 'yes' : 'no'),
  };
}

/** Depletion at each day's end without irrigation, were the plants never short. */
function leftAlone(
  { days: { demand, soakedMm } }: PlantingCell,
  indexes: readonly number[],
  startMm: number,
): number[] {
  let depletionMm = startMm;
  return indexes.map((index) => {
    const changed = endDepletionMm(depletionMm, demand.etcMm[index] as number, soakedMm[index] as number);
    depletionMm = Math.max(0, changed);
    return depletionMm;
  });
}

function goalStep(cell: PlantingCell): TraceStep {
  const { days: planting, course, daily } = cell;
  const after = daily.filter(({ index }) => index > course.last);
  return {
    id: 'goal',
    source: [{ id: 'choice-week-end' }],
    inputs: [
      input('target', depth(planting.demand.targetMm)),
      input('demand-after', depth(totalOf(after, 'etcMm'))),
      input('rain-after', depth(totalOf(after, 'soakedMm'))),
      ...(after.length > 0 ? [input('greatest-before', depth(course.allowedMm))] : []),
    ],
    result: depth(course.goalMm),
  };
}

/** The depletion to reach by the end of the last watering day. */
export function goalLabel({ course, dayOf }: PlantingCell): TraceLabel {
  return { id: 'goal', day: dayOf(course.last) };
}

function needStep(cell: PlantingCell): TraceStep {
  const { course, daily } = cell;
  const upToLast = daily.filter(({ index }) => index <= course.last);
  return {
    id: 'need',
    variant: 'watered',
    source: ['FAO-56 eq. 85–88'],
    inputs: [
      input('depletion-start', depth(course.depletionMm)),
      ...upToLast.map(({ day, etcMm, soakedMm }) => input({ id: 'day-change', day }, depth(etcMm - soakedMm))),
      input(goalLabel(cell), depth(course.goalMm)),
    ],
    result: depth(cell.at('neededMm')),
  };
}

function leftAloneStep(cell: PlantingCell): TraceStep {
  return {
    id: 'need',
    variant: 'left-alone',
    source: [{ id: 'choice' }],
    inputs: [input('filled', code('answer', 'no'))],
    result: depth(cell.at('neededMm')),
  };
}

function noWateringDayStep(cell: PlantingCell): TraceStep {
  return {
    id: 'need',
    variant: 'no-watering-day',
    source: [{ id: 'choice' }],
    inputs: [input('watering-days-in-ground', days(0))],
    result: depth(cell.at('neededMm')),
  };
}
