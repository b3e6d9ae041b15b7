/** On how many of the zone's watering days a planting's line is open. */
import { openMasks } from '../../../engine/season/open-days.ts';
import { daysIn } from '../day-span.ts';
import type { TraceStep, TraceValue } from '../trace-step.ts';
import { days, input } from '../trace-value.ts';
import { isOpenOn, type PlantingCell } from './planting-cell.ts';

export function openDaysStep(cell: PlantingCell): TraceStep {
  const { zone } = cell;
  const masks = openMasks(zone.wateringDays);
  const all = masks.length - 1;
  return {
    id: 'open-days',
    variant: 'no-shut-off',
    source: [{ id: 'choice-open-days' }],
    inputs: [input('week-watering-days', days(all)), ...inGround(cell, masks, all)],
    result: days(cell.at('openDays')),
  };
}

/** Days out of the ground are named where the planting comes or goes within the week. */
function inGround({ ground, week }: PlantingCell, masks: readonly number[], open: number): readonly TraceValue[] {
  if (ground.end - ground.first === 7) return [];
  const mask = masks[open] as number;
  return [input('of-these-in-ground', days(daysIn(ground, (index) => isOpenOn(mask, index - 7 * week)).length))];
}
