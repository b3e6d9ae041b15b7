import { type DayNumber, dayNumber } from '../../engine/calendar.ts';
import type { PlanLine } from '../schema/plan-schema.ts';

/** A line's first day: its own, else the planting's. */
export function firstDayOf({ from }: PlanLine, plantingFirst: DayNumber): DayNumber {
  return from === undefined ? plantingFirst : dayNumber(from);
}

/**
 * Indices of a planting's lines in the plan, in the order in which the garden has them: by first day, and of one day as they
 * were typed. `plantingFirst`: the planting's first day in the ground.
 */
export function lineOrder(lines: readonly PlanLine[], plantingFirst: DayNumber): readonly number[] {
  return lines
    .map((line, index) => ({ index, first: firstDayOf(line, plantingFirst) }))
    .sort((left, right) => left.first - right.first)
    .map(({ index }) => index);
}
